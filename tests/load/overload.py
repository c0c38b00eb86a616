"""One instance at 80 % of what it can do, and at four times that; instance and callers have a processor each. See README.md."""

import asyncio
import json
import os
import sys
import time
import urllib.request

from service import DESIGN, Caller, Instance, get, percentile, post

PORT = 5183
SECONDS = 15


async def closed(request, callers):
    """Answers a second when so many callers ask without pause: what the instance can do."""
    done, until = 0, time.monotonic() + SECONDS / 2

    async def go():
        nonlocal done
        caller = Caller(PORT)
        while time.monotonic() < until:
            good = await caller.ask(request) == 200
            done += good
        caller.close()

    await asyncio.gather(*(go() for _ in range(callers)))
    return done / (SECONDS / 2)


async def offered(request, rate):
    """Requests at a rate that does not wait for answers: good answers a second, their times, and how many were refused or lost."""
    idle, times, tally, tasks = [], [], {}, []

    async def one():
        caller = idle.pop() if idle else Caller(PORT)
        began = time.monotonic()
        status = await caller.ask(request)
        tally[status] = tally.get(status, 0) + 1
        if status == 200:
            times.append(time.monotonic() - began)
        idle.append(caller)

    began = time.monotonic()
    for turn in range(int(rate * SECONDS)):
        await asyncio.sleep(max(0, began + turn / rate - time.monotonic()))
        tasks.append(asyncio.ensure_future(one()))
    sent = time.monotonic() - began
    await asyncio.gather(*tasks)
    return len(times) / (time.monotonic() - began), times, tally, len(tasks) / sent


async def main():
    apart = sorted(os.sched_getaffinity(0))
    instance = Instance(PORT, cpus=set(apart[:1]))
    os.sched_setaffinity(0, set(apart[1:] or apart))
    try:
        asked = urllib.request.Request(f"http://127.0.0.1:{PORT}/v1/designs", DESIGN, {"Content-Type": "application/json"})
        address = json.load(urllib.request.urlopen(asked))["links"]["self"]
        for name, request in {"designs": post("/v1/designs", DESIGN), "templates.pdf": get(f"{address}/templates.pdf")}.items():
            await closed(request, 4)
            peak = await closed(request, 8)
            print(f"{name}: peak {peak:.0f} a second")
            for share in (0.8, 4):
                good, times, tally, sent = await offered(request, share * peak)
                print(f"  at {share} times ({sent:.0f} a second sent): {good:.0f} good a second ({good / peak:.2f} of peak), p50 {1000 * percentile(times, 0.5):.0f} ms, "
                      f"p99 {1000 * percentile(times, 0.99):.0f} ms, {instance.resident_mb():.0f} MB, statuses {dict(sorted(tally.items()))}", flush=True)
    finally:
        instance.stop()


if sys.version_info < (3, 9):
    raise SystemExit("Python 3.9 or newer.")
asyncio.run(main())
