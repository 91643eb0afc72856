"""What `serve` is told by its environment."""

from __future__ import annotations

from typing import Literal

from pydantic import Field, SecretStr, ValidationInfo, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict


class Messenger(BaseSettings):
    """The variables, each with SINKSIDE_ before its name.

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
