"""Made-up studios for the window's tests and pictures.

A state worth looking at is a snapshot in ``studios.py``, named in its ``SCENES``; what it is made of stands beside it,
in the module of that noun. Whatever is made there can be taken from here.
"""

from .clock import *  # noqa: F403
from .desk import *  # noqa: F403
from .history import *  # noqa: F403
from .pieces import *  # noqa: F403
from .prompts import *  # noqa: F403
from .rooms import *  # noqa: F403
from .sheets import *  # noqa: F403
from .studios import *  # noqa: F403
from .warned import *  # noqa: F403
