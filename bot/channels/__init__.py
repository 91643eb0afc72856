"""The ways a message comes in and a reply goes out. They carry; they decide nothing."""
