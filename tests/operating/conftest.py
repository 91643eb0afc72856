"""The loopback messenger, for a bot that is watched."""

from tests.channels.conftest import loopback, sqlite_url, unused_port

__all__ = ["loopback", "sqlite_url", "unused_port"]
