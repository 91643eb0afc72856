"""When somebody is to be reminded: pure reckoning, no clock, no database, no sentences.

Where things are
----------------
rhythm        a rule (RFC 5545), its first moment and a zone; `next_due`, `coming`, `to_utc`
quiet         the hours in which nobody is woken, and where a due moment goes instead
catching_up   what to do with reminders that are due: ping, wait for the morning, or only go on;
              a week without a machine gives one ping a reminder
early         what was done before it was due moves the next one

Terms: *local* is a clock on the wall without a zone, *at* an instant in UTC; a `Due` has both.
Which reminders there are, and which are due, stands in `bot.records` (`reminders`, `pings`);
`bot.conversation` brings the two together.
"""

from __future__ import annotations
