"""Reads the window's tree as a screen reader does (AT-SPI 2, roles of its specification): the boats of the board, a
check's points, the button that signs. Each is found by name and role, and the boat is opened by its own action."""

import subprocess
import sys
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402

PATIENCE = 60  # seconds


def tree(at, depth=0):
    if at is None or depth > 30:
        return
    yield at
    try:
        children = at.get_child_count()
    except Exception:  # it went meanwhile
        return
    for place in range(children):
        try:
            child = at.get_child_at_index(place)
        except Exception:
            continue
        yield from tree(child, depth + 1)


def window_of(name):
    desktop = Atspi.get_desktop(0)
    for place in range(desktop.get_child_count()):
        application = desktop.get_child_at_index(place)
        if application is not None and application.get_name() == name:
            return application
    return None


def is_told(at):
    """Whether it is in view. A line of a list is told wherever the list is scrolled to."""
    return at.get_role_name() == "list item" or at.get_state_set().contains(Atspi.StateType.VISIBLE)


def find(role, part):
    """The first of that role whose name has that part; waits for it."""
    end = time.monotonic() + PATIENCE
    seen = []
    while time.monotonic() < end:
        seen = []
        for at in tree(window_of("tholepin")):
            try:
                if at.get_role_name() != role or not is_told(at):
                    continue
                seen.append(at.get_name())
                if part in at.get_name():
                    return at
            except Exception:
                continue
        time.sleep(0.2)
    sys.exit(f"no {role} is called “{part}”; there are: {seen}")


def press(at):
    names = [at.get_action_name(place) for place in range(at.get_n_actions())]
    if not at.do_action(names.index("Press")):
        sys.exit(f"“{at.get_name()}” cannot be pressed")


def main(program, club):
    window = subprocess.Popen([program, "--no-camera", "--language", "en", club])
    try:
        for boat in ("Bittern: not ready", "Dabchick: not ready", "Grebe: not ready"):
            find("push button", boat)
        press(find("push button", "Bittern: not ready"))
        find("list", "kit and points of this check")
        for point in ("still to find: hull and floor", "still to find: bungs in", "still to find: port chamber"):
            find("list item", point)
        find("push button", "Urgent: launch incomplete")
        find("text", "tag code")
        print("boats, points and the signing button were read from outside")
    finally:
        window.terminate()
        window.wait()


main(*sys.argv[1:])
