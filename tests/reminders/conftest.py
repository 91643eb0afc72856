"""The same fixtures as the channels have."""

from tests.channels.conftest import loopback

__all__ = ["loopback"]
