"""One module a subject of the conversation; `talk` says which verb goes where."""
