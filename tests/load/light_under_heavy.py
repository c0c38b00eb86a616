"""How long light answers take while a hundred callers ask for something heavy. See README.md beside this file."""

import asyncio
import json
import os
import subprocess
import sys
import time

CALLERS = 100
SECONDS = 10
DESIGN = b'{"handSpacingMm":880,"wood":{"species":"white-ash"}}'


def get(path, headers=""):
    return f"GET {path} HTTP/1.1\r\nHost: localhost\r\n{headers}\r\n".encode()


def post(path, body):
    head = f"POST {path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
    return head.encode() + body


def heavy_requests(code):
    design = f"/v1/designs/{code}"
    run = {"sizes": 5, "customers": [{"handSpacingMm": 700 + i * 37 % 300} for i in range(100_000)]}
    return {
        "templates.pdf": get(f"{design}/templates.pdf"),
        "solid.stl": get(f"{design}/solid.stl"),
        "solid.stl packed": get(f"{design}/solid.stl", "Accept-Encoding: br\r\n"),
        "template.dxf": get(f"{design}/template.dxf"),
        "build": get(f"{design}/build"),
        "designs": post("/v1/designs", DESIGN),
        "size runs": post("/v1/size-runs", json.dumps(run, separators=(",", ":")).encode()),
    }


async def ask(reader, writer, request):
    """Sends a request on an open connection; status and body."""
    writer.write(request)
    head = (await reader.readuntil(b"\r\n\r\n")).lower()
    body = b""
    if b"content-length: " in head:
        body = await reader.readexactly(int(head.split(b"content-length: ")[1].split(b"\r\n")[0]))
    elif b"chunked" in head:
        while size := int(await reader.readline(), 16):
            await reader.readexactly(size + 2)
        await reader.readline()
    return int(head[9:12]), body


async def light(port, request, times, pause=0.02):
    reader, writer = await asyncio.open_connection("127.0.0.1", port)
    taken = []
    for _ in range(times):
        begun = time.perf_counter()
        status, _ = await ask(reader, writer, request)
        taken.append(1e3 * (time.perf_counter() - begun))
        assert status == 200, status
        await asyncio.sleep(pause)
    writer.close()
    return sorted(taken)


async def keep_asking(port, request, until, statuses):
    while time.time() < until:
        try:
            reader, writer = await asyncio.open_connection("127.0.0.1", port)
            while time.time() < until:
                status, _ = await ask(reader, writer, request)
                statuses[status] = statuses.get(status, 0) + 1
                if status == 503:
                    await asyncio.sleep(1)
            writer.close()
        except (OSError, asyncio.IncompleteReadError):
            statuses["broken"] = statuses.get("broken", 0) + 1


async def heavy(port, code, name):
    statuses, request = {}, heavy_requests(code)[name]
    until = time.time() + SECONDS
    await asyncio.gather(*(keep_asking(port, request, until, statuses) for _ in range(CALLERS)))
    print(f"    {name}: answers by status {statuses}")


def resident_mb(pid):
    with open(f"/proc/{pid}/status") as status:
        return next(int(line.split()[1]) // 1024 for line in status if line.startswith("VmRSS"))


async def report(port, pid, code, name):
    wood, design = await asyncio.gather(light(port, get("/v1/woods/white-ash"), 200), light(port, get(f"/v1/designs/{code}"), 200))
    figures = " ".join(f"{what} p50 {times[len(times) // 2]:.1f} p99 {times[len(times) * 99 // 100]:.1f} ms;" for what, times in (("wood", wood), ("report", design)))
    print(f"{name}: {figures} resident {resident_mb(pid)} MB; load {os.getloadavg()[0]:.1f}", flush=True)


async def main(port, pid):
    reader, writer = await asyncio.open_connection("127.0.0.1", port)
    code = json.loads((await ask(reader, writer, post("/v1/designs", DESIGN)))[1])["designCode"]
    writer.close()
    for path in ("/v1/woods/white-ash", f"/v1/designs/{code}"):
        await light(port, get(path), 1000, pause=0)  # the runtime is still compiling at first
    await report(port, pid, code, "alone")
    for name in heavy_requests(code):
        others = subprocess.Popen([sys.executable, __file__, str(port), code, name])
        await asyncio.sleep(3)
        await report(port, pid, code, name)
        while others.poll() is None:
            await asyncio.sleep(0.2)


if len(sys.argv) == 3:
    asyncio.run(main(int(sys.argv[1]), int(sys.argv[2])))
else:
    asyncio.run(heavy(int(sys.argv[1]), sys.argv[2], sys.argv[3]))
