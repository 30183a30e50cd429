#!/usr/bin/env python3
"""Runs clang-tidy over our own sources in core, qml and platform, two at a time; exit 1 when it has anything to say.

usage: tidy.py BUILD    a built folder: its compile_commands.json says how each file is compiled, Ninja what it includes

A file that passed is not looked at again until it, a header of ours that it includes, its flags or .clang-tidy change:
the hash of all of these is kept in BUILD/tidy.

Most of the time goes into the headers of Qt and the standard library, so files that are compiled alike are looked at as one,
some at a time. Those that keep the same name to themselves are kept apart; where many do, or it was not foreseen, the name is
given a number. A file in which that finds anything is looked at by itself, and that decides.
"""
import collections, concurrent.futures, hashlib, json, os, pathlib, re, shlex, subprocess, sys, tempfile

together = 25 # files at most
many = 12     # files that share a name of their own: more, and it is numbered

root = pathlib.Path(__file__).resolve().parent.parent
folders = tuple(f"{root}/{name}/" for name in ("core", "qml", "platform"))


def included(build):
    """what Ninja has noted of each object: the headers of ours that it was made from"""
    headers, current = {}, None
    for line in subprocess.run(["ninja", "-C", build, "-t", "deps"], capture_output=True, text=True, check=True).stdout.splitlines():
        if line and not line[0].isspace():
            current = headers.setdefault(line.split(":")[0], set())
        elif current is not None and line.strip():
            path = os.path.normpath(os.path.join(build, line.strip()))
            if path.startswith(folders):
                current.add(path)
    return headers


def own_names(path):
    """what the file's unnamed namespaces define, and now and then a little more"""
    names, inside = set(), False
    for line in pathlib.Path(path).read_text().splitlines():
        if line.startswith("namespace {"):
            inside = True
        elif line == "} // namespace":
            inside = False
        elif inside and (found := re.match(r"(?!using [\w:]+;)\w[^({=;]*?(\w+)\s*[({=;]", line)):
            names.add(found[1])
    return names


def parted(command):
    """what must be the same for files that are looked at as one; and where they look for headers, which adds up"""
    same, adds = [], []
    for at, word in enumerate(command):
        if word == "-isystem" or (at and command[at - 1] == "-isystem"):
            continue
        (adds if re.match(r"-I|-D\w+$", word) else same).append((word,))
    adds += [pair for pair in zip(command, command[1:]) if pair[0] == "-isystem"]
    return tuple(word for word, in same), adds


def groups_of(files):
    """files in groups of which each has its own names, and the names that many have"""
    names = {file: own_names(file) for file in files}
    often = {name for name, files in collections.Counter(sum(map(list, names.values()), [])).items() if files > many}
    groups = []
    for file in files:
        own = names[file] - often
        group = next((group for group in groups if len(group[0]) < together and not own & group[1]), None)
        if group is None:
            groups.append(group := ([], set()))
        group[0].append(file)
        group[1].update(own)
    return [(group, often) for group, _ in groups]


def content(path):
    return hashlib.sha256(pathlib.Path(path).read_bytes()).digest()


def main():
    build = pathlib.Path(sys.argv[1]).resolve()
    stamps = build / "tidy"
    stamps.mkdir(exist_ok=True)
    headers = included(build)
    rules = b"".join(subprocess.run(["clang-tidy", say, root / "CMakeLists.txt"], capture_output=True, check=True).stdout
                     for say in ("--version", "--dump-config"))
    wanted, flags = {}, {}
    for unit in json.loads((build / "compile_commands.json").read_text()):
        if unit["file"].startswith(folders) and not unit["file"].startswith(f"{build}/") and unit["file"] not in wanted:
            made = unit["command"].split(" -o ")[1].split()[0]
            key = hashlib.sha256(rules + unit["command"].encode())
            for path in [unit["file"], *sorted(headers.get(made, ()))]:
                key.update(path.encode() + content(path))
            wanted[unit["file"]] = key.hexdigest()
            command = re.sub(r" -Winvalid-pch| -include \S+/cmake_pch\.hxx", "", unit["command"]) # GCC's, not Clang's
            flags[unit["file"]] = unit["directory"], tuple(shlex.split(command.split(" -o ")[0]))

    def tidy(*arguments):
        return subprocess.run(["clang-tidy", "--quiet", "--extra-arg=-Wno-unknown-warning-option", *arguments],
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)

    def passes(ran):
        return ran.returncode == 0 and not ran.stdout.strip()

    def tidy_by(commands, source, *arguments):
        """as compiled by what flags holds of this file or one like it"""
        directory, command = commands
        with tempfile.TemporaryDirectory() as folder:
            unit = {"directory": directory, "arguments": [*command, "-c", "-ferror-limit=0", str(source)], "file": str(source)}
            (pathlib.Path(folder) / "compile_commands.json").write_text(json.dumps([unit]))
            return tidy("-p", folder, "--config-file", root / ".clang-tidy", *arguments, source)

    def check(file):
        ran = tidy_by(flags[file], file)
        if passes(ran):
            (stamps / wanted[file]).touch()
            return True
        print(ran.stdout.strip() or ran.stderr.strip(), flush=True)
        return False

    def look_together(files, clashing):
        lines = []
        if clashing: # what they include must not see the numbers
            lines = [line for file in files for line in pathlib.Path(file).read_text().splitlines() if line.startswith("#include")]
        for number, file in enumerate(files):
            lines += [f"#define {name} {name}_{number}" for name in clashing] + [f'#include "{file}"']
            lines += [f"#undef {name}" for name in clashing]
        with tempfile.TemporaryDirectory() as folder:
            source = pathlib.Path(folder) / "together.cpp"
            source.write_text("\n".join(lines) + "\n")
            directory, command = flags[files[0]]
            adds = dict.fromkeys(add for file in files for add in parted(flags[file][1])[1])
            # A name of one file may shadow another's.
            command = (*parted(command)[0], "-Wno-shadow", *(word for add in adds for word in add))
            return tidy_by((directory, command), source, "--checks=-bugprone-suspicious-include",
                           "--header-filter=(core|qml|platform)/.*[.](h|cpp)$")

    def check_group(group):
        """how many of them have findings"""
        files, often = group
        named = [own_names(file) for file in files]
        clashing, alone = {name for name in often if sum(name in own for own in named) > 1}, []
        while len(files) > 1:
            ran = look_together(files, sorted(clashing))
            if passes(ran):
                for file in files:
                    (stamps / wanted[file]).touch()
                files = []
                break
            said = ran.stdout + ran.stderr
            names = set(re.findall(r"redefinition of '(?:\w+::)*(\w+)'", said)) - clashing
            if names:
                clashing |= names
                continue
            bad = set(re.findall(r"^(/[^:\n]+):\d+:\d+: (?:error|warning):", said, re.MULTILINE)).intersection(files)
            if not bad: # it does not say where
                break
            alone += sorted(bad)
            files = [file for file in files if file not in bad]
        return sum(not check(file) for file in [*files, *alone])

    known = {stamp.name for stamp in stamps.iterdir()}
    for old in known - set(wanted.values()):
        (stamps / old).unlink()
    todo = [file for file, key in wanted.items() if key not in known]
    print(f"{len(todo)} of {len(wanted)} files to look at", flush=True)
    alike = {}
    for file in todo:
        alike.setdefault((flags[file][0], parted(flags[file][1])[0]), []).append(file)
    groups = [group for files in alike.values() for group in groups_of(files)]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        bad = sum(pool.map(check_group, groups))
    if bad:
        print(f"{bad} files with findings")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
