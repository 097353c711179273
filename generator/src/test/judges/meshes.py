#!/usr/bin/python3
"""Reads every mesh file that expected.tsv lists with the assimp library and measures it.

usage: meshes.py FOLDER

expected.tsv, with tabs between: file, parts, triangles, volume (mm3), centroid x, y, z (mm, z up). Each file has to have
that many triangles, and that volume and centroid once every node is put where it belongs; one that tells parts apart has
to have that many. Ends with 1 and a sentence at the first file that has not. Needs Debian's python3-pyassimp and
python3-numpy. Of the former only the library's functions and records are used: its load() follows pointers that the
library never set, and falls.
"""

import ctypes
import os
import sys

import numpy
from pyassimp import helper

# what a volume may differ by, as a share; what a centroid may differ by, mm
SHARE = 1e-6
AWAY = 1e-3
# a GLB is in metres with y up; each column says where an axis of it points
FROM_METRES = 1000 * numpy.array([[1, 0, 0], [0, 0, -1], [0, 1, 0]], dtype=float)
WITHOUT_PARTS = ".stl"

load, _, _, _, release, _ = helper.search_library()


def main(folder):
    with open(os.path.join(folder, "expected.tsv"), encoding="utf-8") as lines:
        rows = [line.rstrip("\n").split("\t") for line in lines]
    if not rows:
        raise ValueError("expected.tsv lists no file")
    for name, *figures in rows:
        parts, triangles = (int(figure) for figure in figures[:2])
        volume, *centroid = (float(figure) for figure in figures[2:])
        try:
            judge(os.path.join(folder, name), parts, triangles, volume, numpy.array(centroid))
        except ValueError as fault:
            raise ValueError(f"{name}: {fault}") from fault
    print(f"{len(rows)} meshes read by assimp, all as expected")


def judge(path, parts, triangles, volume, centroid):
    found = read(path)
    if not path.endswith(WITHOUT_PARTS):
        same("parts", len(found), parts)
    if path.endswith(".glb"):
        found = [points @ FROM_METRES.T for points in found]
    measured = [measure(points) for points in found]
    same("triangles", sum(len(points) for points in found), triangles)
    whole = sum(own for own, _ in measured)
    if not abs(whole - volume) <= SHARE * volume:
        raise ValueError(f"volume is {whole:.3f} mm3, but {volume:.3f} is expected")
    middle = sum(own * at for own, at in measured) / whole
    if not numpy.linalg.norm(middle - centroid) <= AWAY:
        raise ValueError(f"centroid is {middle} mm, but {centroid} is expected")


def read(path):
    """For each mesh in a file its triangles' corners, where the nodes put them."""
    scene = load(os.fsencode(path), 0)
    if not scene:
        raise ValueError("assimp cannot read it")
    try:
        return corners(scene.contents.mRootNode.contents, scene.contents.mMeshes, numpy.identity(4))
    finally:
        release(scene)


def corners(node, meshes, above):
    matrix = above @ numpy.frombuffer(node.mTransformation, dtype=numpy.float32).reshape(4, 4)
    found = []
    for i in range(node.mNumMeshes):
        mesh = meshes[node.mMeshes[i]].contents
        points = array(mesh.mVertices, mesh.mNumVertices).view(numpy.float32).reshape(-1, 3).astype(float)
        faces = [face(mesh.mFaces[f]) for f in range(mesh.mNumFaces)]
        found.append((points @ matrix[:3, :3].T + matrix[:3, 3])[numpy.array(faces)])
    for i in range(node.mNumChildren):
        found.extend(corners(node.mChildren[i].contents, meshes, matrix))
    return found


def array(pointer, count):
    whole = ctypes.cast(pointer, ctypes.POINTER(pointer._type_ * count)).contents
    return numpy.frombuffer(whole, dtype=numpy.uint8)


def face(record):
    if record.mNumIndices != 3:
        raise ValueError(f"a face has {record.mNumIndices} corners, but must have 3")
    return record.mIndices[0:3]


def measure(points):
    """Volume and centroid by tetrahedra up to the middle of all corners, where rounding matters least."""
    middle = points.reshape(-1, 3).mean(axis=0)
    a, b, c = (points[:, corner] - middle for corner in range(3))
    sixfold = numpy.einsum("ij,ij->i", a, numpy.cross(b, c))
    volume = sixfold.sum() / 6
    return volume, middle + (sixfold[:, None] * (a + b + c)).sum(axis=0) / 24 / volume


def same(what, found, expected):
    if found != expected:
        raise ValueError(f"there are {found} {what}, but {expected} are expected")


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: meshes.py FOLDER")
    try:
        main(sys.argv[1])
    except ValueError as fault:
        sys.exit(str(fault))
