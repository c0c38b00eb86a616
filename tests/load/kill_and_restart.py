"""Two instances behind the proxy of docs/deploy: one killed and restarted under load, then one ended with SIGTERM. See README.md."""

import asyncio
import json
import os
import shutil
import signal
import subprocess
import tempfile
import time
import urllib.request

from service import DESIGN, ROOT, Caller, Instance, get, post

SECONDS = 24
CALLERS = 24


async def call(requests, until, tally):
    caller, turn = Caller(5180), 0
    while time.monotonic() < until:
        status = await caller.ask(requests[turn % len(requests)])
        tally[status] = tally.get(status, 0) + 1
        turn += 1
    caller.close()


async def disturb(instances):
    """Kills the first at a quarter of the time and restarts it; ends the second politely at three quarters and restarts it."""
    await asyncio.sleep(SECONDS / 4)
    instances[0].stop(signal.SIGKILL)
    await asyncio.sleep(SECONDS / 8)
    await asyncio.to_thread(instances[0].start)
    await asyncio.sleep(SECONDS / 8)
    code = await asyncio.to_thread(instances[1].stop)
    print(f"SIGTERM under load: exit code {code}")
    await asyncio.to_thread(instances[1].start)


async def main():
    instances = [Instance(5181), Instance(5182)]
    work = tempfile.mkdtemp()
    shutil.copy(os.path.join(ROOT, "docs", "deploy", "nginx.conf"), work)
    proxy = subprocess.Popen(["nginx", "-p", work, "-c", "nginx.conf", "-g", "daemon off;" + (" user root;" if os.geteuid() == 0 else "")])
    try:
        time.sleep(1)
        asked = urllib.request.Request("http://127.0.0.1:5180/v1/designs", DESIGN, {"Content-Type": "application/json"})
        address = json.load(urllib.request.urlopen(asked))["links"]["self"]
        requests = [get(address), post("/v1/designs", DESIGN), get(f"{address}/outline.svg"), get("/v1/woods"), get(f"{address}/build"), post("/v1/designs", DESIGN)]
        tally, until = {}, time.monotonic() + SECONDS
        await asyncio.gather(disturb(instances), *(call(requests, until, tally) for _ in range(CALLERS)))
        failed = sum(count for status, count in tally.items() if status != 200)
        print(f"{sum(tally.values())} requests, {failed} failed: {dict(sorted(tally.items()))}")
        raise SystemExit(failed > 0)
    finally:
        proxy.terminate()
        for instance in instances:
            instance.stop(signal.SIGKILL)
        shutil.rmtree(work, ignore_errors=True)


asyncio.run(main())
