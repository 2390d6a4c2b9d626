"""Between the threads: the newest snapshot, answers on the right thread, and silence after the end."""

from __future__ import annotations

import threading
from concurrent.futures import Future

import pytest
from PySide6.QtCore import QObject, QThread
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from studiowatch.service.commands import HearWarning, Refused
from studiowatch.ui.bridge import CLOSING_WORDS, Courier, SnapshotBridge

from .scenes import EMPTY, FOUR_CALM, FOUR_WARNED, ScriptedDesk

pytestmark = pytest.mark.window
HEAR = HearWarning(warning_key="w")


class Answers:
    """Keeps what came back, and on which thread."""

    def __init__(self) -> None:
        self.owner = QObject()
        self.said: list[tuple[str, str]] = []
        self.threads: list[QThread] = []

    def done(self, key: str) -> None:
        self.said.append(("done", key))
        self.threads.append(QThread.currentThread())

    def refused(self, sentence: str) -> None:
        self.said.append(("refused", sentence))
        self.threads.append(QThread.currentThread())


@pytest.fixture
def answers(qapp: QApplication) -> Answers:
    assert qapp is not None
    return Answers()


def send(courier: Courier, answers: Answers) -> None:
    courier.send(HEAR, owner=answers.owner, done=answers.done, refused=answers.refused)


def test_that_only_the_newest_snapshot_is_fetched(qtbot: QtBot) -> None:
    bridge = SnapshotBridge()
    with qtbot.waitSignal(bridge.arrived):
        for snapshot in (EMPTY, FOUR_CALM, FOUR_WARNED):
            bridge.offer(snapshot)
    assert bridge.fetch() is FOUR_WARNED
    assert bridge.fetch() is None


@pytest.mark.usefixtures("qapp")
def test_that_one_signal_is_sent_for_many_snapshots() -> None:
    bridge, signals = SnapshotBridge(), []
    bridge.arrived.connect(lambda: signals.append(1))
    for _ in range(1000):
        bridge.offer(EMPTY)
    assert len(signals) == 1
    bridge.fetch()
    bridge.offer(FOUR_CALM)
    assert len(signals) == 2


@pytest.mark.usefixtures("qapp")
def test_that_nothing_is_taken_after_the_end() -> None:
    bridge = SnapshotBridge()
    bridge.close()
    bridge.offer(EMPTY)
    assert bridge.fetch() is None


def test_that_an_answer_from_the_keepers_thread_comes_on_the_windows(answers: Answers, qtbot: QtBot) -> None:
    desk = ScriptedDesk(hold=True)
    courier = Courier(desk)
    send(courier, answers)
    keeper = threading.Thread(target=desk.settle, args=(desk.futures[0],))
    keeper.start()
    keeper.join()
    assert answers.said == []
    qtbot.waitUntil(lambda: answers.said == [("done", "made")])
    assert answers.threads == [QApplication.instance().thread()]


def test_that_a_refusal_is_her_sentence(answers: Answers, qtbot: QtBot) -> None:
    desk = ScriptedDesk(answer=Refused("That warning is over."))
    courier = Courier(desk)
    send(courier, answers)
    qtbot.waitUntil(lambda: answers.said == [("refused", "That warning is over.")])


def test_that_a_command_lost_in_the_closing_is_told(answers: Answers, qtbot: QtBot) -> None:
    desk = ScriptedDesk(hold=True)
    courier = Courier(desk)
    send(courier, answers)
    future: Future[str] = desk.futures[0]
    assert future.cancel()
    qtbot.waitUntil(lambda: answers.said == [("refused", CLOSING_WORDS)])


def test_that_no_answer_comes_after_the_end(answers: Answers) -> None:
    desk = ScriptedDesk(hold=True)
    courier = Courier(desk)
    send(courier, answers)
    courier.close()
    desk.settle(desk.futures[0])
    QApplication.processEvents()
    assert answers.said == []
