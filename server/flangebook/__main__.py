"""``python -m flangebook``: the same as the installed command."""

import sys

from flangebook.serving.command import main

sys.exit(main())
