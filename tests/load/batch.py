"""A batch of designs, 100 000 lines unless the command line names another count: memory stays flat, and two processors do more than one."""

import os
import subprocess
import sys
import time

from service import Instance

WOODS = ["white-ash", "black-cherry", "sitka-spruce", "sugar-maple"]


def lines(count):
    for k in range(count):
        yield b'{"handSpacingMm":%d,"wood":{"species":"%s"}}\n' % (760 + k % 160, WOODS[k % 4].encode())


def run(instance, count):
    """Seconds that the batch took, and the most that was resident on the way, MB."""
    caller = subprocess.Popen(
        ["curl", "-sS", "-T", "-", "-X", "POST", "-H", "Content-Type: application/x-ndjson", "-o", "/dev/null", "-w", "%{http_code}",
         f"http://127.0.0.1:{instance.port}/v1/design-batches?fields=outcome"], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
    began, most = time.monotonic(), 0
    for k, line in enumerate(lines(count)):
        caller.stdin.write(line)
        if k % 1000 == 0:
            most = max(most, instance.resident_mb())
    status = caller.communicate()[0]
    assert status == b"200", status
    return time.monotonic() - began, max(most, instance.resident_mb())


def main(count):
    whole = Instance(5203)
    run(whole, 2000)
    for share in (count // 10, count):
        seconds, most = run(whole, share)
        print(f"{share} lines: {seconds:.1f} s, {most:.0f} MB at most")
    two, _ = run(whole, count // 10)
    whole.stop()

    one = Instance(5204)
    for task in os.listdir(f"/proc/{one.process.pid}/task"):
        os.sched_setaffinity(int(task), {min(os.sched_getaffinity(0))})
    run(one, 2000)
    alone, _ = run(one, count // 10)
    one.stop()
    print(f"on one processor {alone / two:.2f} times as long as on {os.cpu_count()}")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000)
