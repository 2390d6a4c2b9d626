"""Where the self-contained bundle begins."""

import sys

from studiowatch.compose import main

if __name__ == "__main__":
    sys.exit(main())
