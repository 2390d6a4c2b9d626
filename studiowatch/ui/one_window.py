"""One window for one studio: a second start brings the first one to the front.

They find each other by a local socket of this user's, named after the folder; nothing listens on a network.
"""

from __future__ import annotations

import getpass
import hashlib
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtNetwork import QLocalServer, QLocalSocket

_ANSWER = b"here\n"
_PATIENCE_MS = 2000


def socket_name(folder: Path) -> str:
    """Return the name under which the window on `folder` is found: short, and another for each user and folder."""
    whose = f"{getpass.getuser()}:{folder.resolve()}"
    return f"studiowatch-{hashlib.sha256(whose.encode()).hexdigest()[:24]}"


class OneWindow(QObject):
    """Listens for a second start; `asked` asks for the window. Whoever makes it holds the folder's lock."""

    asked = Signal()

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._server = QLocalServer(self)
        self._server.setSocketOptions(QLocalServer.SocketOption.UserAccessOption)
        self._server.newConnection.connect(self._greet)
        name = socket_name(folder)
        QLocalServer.removeServer(name)  # one that a killed window left behind: the lock says that nobody else is there
        self._server.listen(name)

    @property
    def is_listening(self) -> bool:
        """Whether a second start finds this window."""
        return self._server.isListening()

    def close(self) -> None:
        """Listen no more."""
        self._server.close()

    def _greet(self) -> None:
        while (caller := self._server.nextPendingConnection()) is not None:
            caller.disconnected.connect(caller.deleteLater)
            caller.write(_ANSWER)
            caller.flush()
            self.asked.emit()


def bring_to_front(folder: Path) -> bool:
    """Ask the window on `folder` to come to the front; return whether it is there and answered."""
    socket = QLocalSocket()
    socket.connectToServer(socket_name(folder))
    if not socket.waitForConnected(_PATIENCE_MS):
        return False
    answered = socket.waitForReadyRead(_PATIENCE_MS) and bytes(socket.readAll().data()).startswith(_ANSWER)
    socket.disconnectFromServer()
    return answered
