"""Time from the start of a process to its first answer of 200, against a trivial program's, in turns. See README.md."""

import os
import signal
import socket
import statistics
import subprocess
import sys
import time

from service import DESIGN, ROOT, get, post

PORT, ROUNDS = 5185, 11
ASKED = {"GET /health/live": get("/health/live"), "GET /v1/woods": get("/v1/woods"), "POST /v1/designs": post("/v1/designs", DESIGN)}


def first_answer(program, request):
    """Milliseconds from the start of the process to the first byte of its first good answer."""
    began = time.monotonic()
    process = subprocess.Popen(["dotnet", program, "--urls", f"http://127.0.0.1:{PORT}"], stdout=subprocess.DEVNULL)
    try:
        while time.monotonic() - began < 20:
            try:
                with socket.create_connection(("127.0.0.1", PORT), timeout=20) as line:
                    line.sendall(request)
                    if line.recv(4096).startswith(b"HTTP/1.1 200 "):
                        return 1000 * (time.monotonic() - began)
            except OSError:
                pass
            time.sleep(0.002)
        raise SystemExit(f"{program} does not answer.")
    finally:
        process.send_signal(signal.SIGKILL)
        process.wait()


def main(trivial):
    service = os.path.join(ROOT, "artifacts", "app", "PaddleApi.dll")
    runs = {"trivial": (trivial, ASKED["GET /health/live"]), **{name: (service, request) for name, request in ASKED.items()}}
    times = {name: [] for name in runs}
    for turn in range(ROUNDS + 1):
        for name, (program, request) in runs.items():
            took = first_answer(program, request)
            if turn > 0:  # the first of each finds its files not yet in memory
                times[name].append(took)
    least = statistics.median(times["trivial"])
    for name, took in times.items():
        print(f"{name:18} {statistics.median(took):5.0f} ms, {statistics.median(took) / least:.2f} times the trivial program's")


if len(sys.argv) != 2:
    raise SystemExit("python3 start.py TRIVIAL.dll")
main(sys.argv[1])
