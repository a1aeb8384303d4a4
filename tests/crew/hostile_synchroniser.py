"""A synchronizer of the tests' own, worse than any: it brings files between crew folders half first, old
ones again, out of order, as conflict copies and drafts, deletes some and makes them again.

Nothing it writes is a file that no tablet wrote, so that in the end quiet() can bring all of it whole.
"""
import os
import re
import zlib

segment = re.compile(r"[0-9a-f]{16}-\d{6,}-([0-9a-f]{8})\.hemline")

# deed -> how often beside the others
DEEDS = {"whole": 30, "half": 10, "rest": 15, "zeros": 4, "again": 6, "copy": 6, "draft": 6, "delete": 5, "spoil": 3}


def is_whole(file):
    """Whether a segment holds what its name says; it may go at any moment."""
    name = segment.fullmatch(file.name)
    try:
        return bool(name) and zlib.crc32(file.read_bytes()) == int(name[1], 16)
    except OSError:
        return False


def segments_in(crew):
    return [file for file in crew.glob("*/*.hemline") if segment.fullmatch(file.name)]


class Synchroniser:
    def __init__(self, crews, random):
        self.crews = crews
        self.random = random
        self.done = {}       # deed -> how often
        self.half_done = []  # (source, target) still to be brought whole
        self.old = []        # (bytes, target): as they once were

    def step(self):
        """One deed, on files that are there now."""
        source, target = self.random.sample(self.crews, 2)
        files = segments_in(source)
        if not files:
            return
        file = self.random.choice(files)
        there = target / file.relative_to(source)
        deed = self.random.choices(list(DEEDS), list(DEEDS.values()))[0]
        try:
            there.parent.mkdir(parents=True, exist_ok=True)
            getattr(self, deed)(file, there)
        except OSError:
            return  # a tablet was quicker
        self.done[deed] = self.done.get(deed, 0) + 1

    def whole(self, file, there):
        """As good synchronizers do: beside its name, then moved."""
        draft = there.parent / f".syncthing.{there.name}.tmp"
        draft.write_bytes(file.read_bytes())
        draft.rename(there)

    def half(self, file, there):
        """In place, a part of it; the rest much later or never."""
        whole = file.read_bytes()
        there.write_bytes(whole[: self.random.randrange(len(whole) or 1)])
        self.half_done.append((file, there))

    def rest(self, _file, _there):
        if self.half_done:
            file, there = self.half_done.pop(self.random.randrange(len(self.half_done)))
            with open(there, "r+b") as target:
                target.write(file.read_bytes())

    def zeros(self, file, there):
        """Room for it, and nothing in it yet."""
        there.write_bytes(bytes(file.stat().st_size))
        self.half_done.append((file, there))

    def again(self, file, there):
        """What was there at some time, once more, with the time it had then."""
        if self.old:
            before, target = self.random.choice(self.old)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_bytes(before)
            os.utime(target, (1e9, 1e9))
        self.old.append((file.read_bytes(), there))

    def copy(self, file, there):
        """A conflict copy, under the names that synchronizers give."""
        name = self.random.choice([f"{there.stem}.sync-conflict-20260704-101112-ABCDEFG.hemline",
                                   f"{there.stem} (conflicted copy).hemline", f"{there.name}.conflict",
                                   f"{there.stem} (1).hemline"])
        whole = file.read_bytes()
        (there.parent / name).write_bytes(whole[: self.random.randrange(len(whole) + 1)])

    def draft(self, file, there):
        whole = file.read_bytes()
        (there.parent / f".syncthing.{there.name}.tmp").write_bytes(whole[: len(whole) // 2])

    def delete(self, _file, there):
        there.unlink()

    def spoil(self, file, there):
        whole = bytearray(file.read_bytes())
        if whole:
            whole[self.random.randrange(len(whole))] ^= 1
        there.write_bytes(whole)

    def quiet(self):
        """Every segment that is whole anywhere is whole everywhere; the rest goes."""
        good = {}
        for crew in self.crews:
            for file in segments_in(crew):
                if is_whole(file):
                    good[file.relative_to(crew)] = file.read_bytes()
                else:
                    file.unlink(missing_ok=True)
        for crew in self.crews:
            for name, whole in good.items():
                if not is_whole(crew / name):
                    (crew / name).parent.mkdir(parents=True, exist_ok=True)
                    (crew / name).write_bytes(whole)
