"""Where things are kept when nothing else was said."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Literal

from pydantic import Field, SecretStr, ValidationInfo, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict


class Messenger(BaseSettings):
    """What `serve` is told by its environment.

    Attributes
    ----------
    telegram_token : of the bot
    telegram_api_url : of a Bot API server of one's own
    webhook_url : where the messenger delivers updates to; without it they are polled for
    webhook_listen : host and port that are listened on for it
    operator_listen : host and port of the pages that tell how it runs; without it there are none
    log_format : of a line of the log, `text` for key=value
    """

    model_config = SettingsConfigDict(env_prefix="SINKSIDE_")

    telegram_token: SecretStr = SecretStr("")
    telegram_api_url: str | None = None
    webhook_url: str | None = Field(default=None, pattern=r"^https?://\S+$")
    webhook_listen: str = "127.0.0.1:8080"
    operator_listen: str = ""
    log_format: Literal["text", "json"] = "text"

    @field_validator("webhook_listen", "operator_listen")
    @classmethod
    def _host_and_port(cls, value: str, info: ValidationInfo) -> str:
        if not value and info.field_name == "operator_listen":
            return value
        host, _, port = value.rpartition(":")
        if not host or not port.isdecimal() or not 0 < int(port) < 2**16:
            raise ValueError("send a host and a port, like 127.0.0.1:8080")
        return value

    @property
    def listen(self) -> tuple[str, int]:
        """Host and port."""
        return _split(self.webhook_listen)

    @property
    def operator(self) -> tuple[str, int] | None:
        """Host and port of the operator's pages, None where there are none."""
        return _split(self.operator_listen) if self.operator_listen else None


def _split(listen: str) -> tuple[str, int]:
    host, _, port = listen.rpartition(":")
    return host.strip("[]"), int(port)


def data_folder() -> Path:
    """The user's data folder of this program, made where it is missing."""
    base = Path(os.environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share")
    folder = base / "sinkside"
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)  # nobody else's to read
    return folder


def default_database() -> str:
    """URL of the records in the user's data folder."""
    return f"sqlite:///{data_folder() / 'records.db'}"


def demo_file() -> Path:
    """The invented collection that `chat --demo` shows."""
    return Path(__file__).parent.parent / "fixtures" / "demo" / "collection.json"
