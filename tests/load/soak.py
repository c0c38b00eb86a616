"""One instance under mixed load for so many seconds (60 unless given): what is resident at each tenth. See README.md."""

import asyncio
import json
import sys
import time
import urllib.request

from service import DESIGN, Caller, Instance, get, post

PORT, CALLERS = 5184, 8


async def main(seconds):
    instance = Instance(PORT)
    try:
        asked = urllib.request.Request(f"http://127.0.0.1:{PORT}/v1/designs", DESIGN, {"Content-Type": "application/json"})
        address = json.load(urllib.request.urlopen(asked))["links"]["self"]
        requests = [post("/v1/designs", DESIGN), get(address), get(f"{address}/outline.svg"), get(f"{address}/build"), get(f"{address}/template.dxf"),
                    get(f"{address}/templates.pdf"), get(f"{address}/solid.stl"), post("/v1/designs", b'{"handSpacingMm":1e308}')]
        until, tally = time.monotonic() + seconds, {}

        async def go(turn):
            caller = Caller(PORT)
            while time.monotonic() < until:
                status = await caller.ask(requests[turn % len(requests)])
                tally[status] = tally.get(status, 0) + 1
                turn += 1
            caller.close()

        async def watch():
            for _ in range(10):
                await asyncio.sleep(seconds / 10)
                print(f"{instance.resident_mb():.0f} MB", end=" ", flush=True)

        await asyncio.gather(watch(), *(go(turn) for turn in range(CALLERS)))
        print(f"\n{sum(tally.values())} requests, statuses {dict(sorted(tally.items()))}")
        raise SystemExit(any(status == 0 or status >= 500 and status != 503 for status in tally))
    finally:
        instance.stop()


asyncio.run(main(float(sys.argv[1]) if len(sys.argv) > 1 else 60))
