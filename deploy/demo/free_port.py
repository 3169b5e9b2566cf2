"""Prints the wished port of the loopback address if it is free, otherwise any free one."""

import socket
import sys

with socket.socket() as probe:
    probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        probe.bind(("127.0.0.1", int(sys.argv[1])))
    except OSError:
        probe.bind(("127.0.0.1", 0))
    print(probe.getsockname()[1])
