"""Where the self-contained bundle begins."""

import sys

from studiowatch.__main__ import main

if __name__ == "__main__":
    sys.exit(main())
