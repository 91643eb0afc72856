"""What is wanted of the records and beside a dose: forms over the words of a message."""
