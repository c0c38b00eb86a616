"""What the load scripts share: instances started and stopped, requests over kept connections, percentiles."""

import asyncio
import os
import signal
import subprocess
import time
import urllib.request

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
DESIGN = b'{"handSpacingMm":880,"wood":{"species":"white-ash"}}'


class Instance:
    """One process of the published service."""

    def __init__(self, port, cpus=None, **settings):
        self.port, self.cpus = port, cpus
        self.settings = {"Serilog__MinimumLevel__Default": "Warning", **settings}
        self.start()

    def start(self):
        program = os.path.join(ROOT, "artifacts", "app", "PaddleApi.dll")
        self.process = subprocess.Popen(
            ["dotnet", program, "--urls", f"http://127.0.0.1:{self.port}"], env={**os.environ, **self.settings},
            preexec_fn=(lambda: os.sched_setaffinity(0, self.cpus)) if self.cpus else None)
        for _ in range(100):
            try:
                urllib.request.urlopen(f"http://127.0.0.1:{self.port}/health/ready", timeout=1).read()
                return
            except OSError:
                time.sleep(0.1)
        raise SystemExit("The service did not become ready.")

    def resident_mb(self):
        with open(f"/proc/{self.process.pid}/statm") as statm:
            return int(statm.read().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 1e6

    def stop(self, how=signal.SIGTERM):
        self.process.send_signal(how)
        return self.process.wait(timeout=60)


def get(path):
    return f"GET {path} HTTP/1.1\r\nHost: localhost\r\n\r\n".encode()


def post(path, body):
    head = f"POST {path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {len(body)}\r\n\r\n"
    return head.encode() + body


class Caller:
    """A caller with one kept connection."""

    def __init__(self, port):
        self.port = port
        self.writer = None

    async def ask(self, request):
        """Status of the answer; 0 where none came."""
        try:
            if self.writer is None:
                self.reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port)
            self.writer.write(request)
            head = (await self.reader.readuntil(b"\r\n\r\n")).decode("latin-1").lower()
            if "content-length:" in head:
                await self.reader.readexactly(int(head.split("content-length:")[1].split("\r\n")[0]))
            elif "chunked" in head:
                while (size := int((await self.reader.readline()).split(b";")[0], 16)) > 0:
                    await self.reader.readexactly(size + 2)
                await self.reader.readline()
            if "connection: close" in head:
                self.close()
            return int(head.split()[1])
        except (OSError, asyncio.IncompleteReadError, ValueError):
            self.close()
            return 0

    def close(self):
        if self.writer is not None:
            self.writer.close()
        self.writer = None


def percentile(values, share):
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, int(share * len(ordered)))] if ordered else float("nan")
