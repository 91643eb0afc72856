"""The bot against the loopback server, as the channels have it."""

from tests.channels.conftest import chat, club, loopback, service, sqlite_url, unused_port

__all__ = ["chat", "club", "loopback", "service", "sqlite_url", "unused_port"]
