#!/usr/bin/env python3
"""Judges STEP files by OpenCASCADE's test harness (Debian package occt-draw), all in one process.

    python3 step.py FOLDER

FOLDER holds expected.tsv, written by org.standwright.solid.WriteStep. Every file has to be read with all of the reader's
repairs switched off, be valid, hold the solids, cylindrical faces, volume and centre that are expected, the name, and a
colour. The first file that doesn't is named, and the exit code is 1.
"""

import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile

SHARED = "/usr/share/opencascade/resources"

# what the reader may do: work out where edges run in the parameters of their surfaces, which no file says
ALLOWED = {
    "FixFaceMode",
    "FixWireMode",
    "FixEdgeCurvesMode",
    "FixAddPCurveMode",
    "FixAddCurve3dMode",
    "FixSeamMode",
    "FixShiftedMode",
    "FixSolidMode",
    "FixShellMode",
    "FixSameParameterMode",
    "FixVertexToleranceMode",
    "AutoCorrectPrecisionMode",
    "ModifyGeometryMode",
    "ClosedWireMode",
    "PreferencePCurveMode",
}

SCRIPT = r"""
pload MODELING XSDRAW XDE

proc fault {file what} {
    puts "FAULT $file: $what"
    exit 1
}

proc near {file what found expected slack} {
    if {!(abs($found - $expected) <= $slack)} {
        fault $file "$what is $found, but should be $expected within $slack"
    }
}

proc judge {file volume off x y z away cylinders solids name} {
    catch {Close Doc}
    catch {unset shape}
    ReadStep Doc $file
    XGetOneShape shape Doc
    if {![isdraw shape]} {fault $file "holds no shape"}
    set check [checkshape shape]
    if {![string match "*seems to be valid*" $check]} {fault $file "is not valid: $check"}
    set count [nbshapes shape -t]
    regexp {SOLID +: (\d+)} $count -> found
    near $file "number of solids" $found $solids 0
    regexp {SHELL +: (\d+)} $count -> found
    near $file "number of shells" $found $solids 0
    set text [vprops shape 1e-10 -full]
    regexp {Mass : +(\S+)} $text -> found
    near $file volume $found $volume $off
    foreach axis {X Y Z} expected [list $x $y $z] {
        regexp "$axis = +(\\S+)" $text -> found
        near $file "centre's $axis" $found $expected $away
    }
    set round 0
    foreach face [explode shape F] {
        mksurface surface $face
        if {[string match "*CylindricalSurface*" [dump surface]]} {incr round}
    }
    near $file "number of cylindrical faces" $round $cylinders 0
    eval unset [directory shape*]
    if {[string first "\"$name\"" [string map {"\n" " "} [Xdump Doc]]] < 0} {fault $file "does not name $name"}
    if {[llength [XGetAllColors Doc]] == 0} {fault $file "has no colour"}
}

set input [open expected.tsv]
fconfigure $input -encoding utf-8
set files 0
while {[gets $input line] >= 0} {
    set fields [split $line "\t"]
    if {[catch {judge {*}$fields} message]} {fault [lindex $fields 0] $message}
    incr files
}
puts "OK $files"
exit 0
"""


def environment(folder):
    """Where the harness finds its plug-ins, which it asks for by names that only development packages have."""
    libraries = os.path.join(folder, "lib")
    os.mkdir(libraries)
    for library in glob.glob("/usr/lib/*/libTK*.so.7"):
        os.symlink(library, os.path.join(libraries, os.path.basename(library)[: -len(".7")]))
    settings = os.path.join(folder, "settings")
    shutil.copytree(SHARED + "/XSTEPResource", settings)
    with open(settings + "/STEP", encoding="latin-1") as file:
        text = file.read()
    with open(settings + "/STEP", "w", encoding="latin-1") as file:
        file.write(re.sub(r"(?m)^(FromSTEP\.FixShape\.(\w+)\s*:)\s*-1", strict, text))
    return {
        **os.environ,
        "LD_LIBRARY_PATH": libraries,
        "CASROOT": "/usr/share/opencascade",
        "DRAWHOME": SHARED + "/DrawResources",
        "DRAWDEFAULT": SHARED + "/DrawResources/DrawDefault",
        "CSF_DrawPluginDefaults": SHARED + "/DrawResources",
        "CSF_XSMessage": SHARED + "/XSMessage",
        "CSF_SHMessage": SHARED + "/SHMessage",
        "CSF_StandardDefaults": SHARED + "/StdResource",
        "CSF_PluginDefaults": SHARED + "/StdResource",
        "CSF_STEPDefaults": settings,
    }


def strict(match):
    return match.group(0) if match.group(2) in ALLOWED else match.group(1) + " 0"


def main(folder):
    with open(os.path.join(folder, "expected.tsv"), encoding="utf-8") as file:
        expected = len(file.readlines())
    with tempfile.TemporaryDirectory() as work:
        script = os.path.join(work, "judge.tcl")
        with open(script, "w", encoding="utf-8") as file:
            file.write(SCRIPT)
        harness = glob.glob("/usr/bin/occt-draw-*")[0]
        done = subprocess.run(
            [harness, "-b", "-f", script],
            cwd=folder,
            env=environment(work),
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            encoding="utf-8",
            errors="replace",
        )
    faults = [line for line in done.stdout.splitlines() if line.startswith("FAULT")]
    if faults or "OK %d" % expected not in done.stdout:
        sys.exit((faults or [done.stdout[-2000:]])[0])
    print("%d STEP files are valid without repair and hold what they should" % expected)


if __name__ == "__main__":
    main(sys.argv[1])
