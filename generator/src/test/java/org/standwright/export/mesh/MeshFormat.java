package org.standwright.export.mesh;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;

/** Every format of meshes: how it is written, and how somebody else reads the parts again, in assembly coordinates. */
enum MeshFormat {
    STL("-mm.stl", 0) {
        @Override
        void write(AssemblySolids assembly, OutputStream out) throws IOException {
            StlWriter.write(assembly, out);
        }

        @Override
        List<ReadMesh> read(byte[] file, AssemblySolids assembly) {
            return ReadStl.of(file, assembly);
        }
    },
    STL_TEXT("-mm-text.stl", 0) {
        @Override
        void write(AssemblySolids assembly, OutputStream out) throws IOException {
            StlTextWriter.write(assembly, out);
        }

        @Override
        List<ReadMesh> read(byte[] file, AssemblySolids assembly) {
            return ReadStl.of(file, assembly);
        }
    },
    OBJ("-mm.obj", 0) {
        @Override
        void write(AssemblySolids assembly, OutputStream out) throws IOException {
            ObjWriter.write(assembly, "assembly-mm.mtl", out);
        }

        @Override
        List<ReadMesh> read(byte[] file, AssemblySolids assembly) {
            return ReadObj.of(file).objects();
        }
    },
    THREE_MF(".3mf", 0) {
        @Override
        void write(AssemblySolids assembly, OutputStream out) throws IOException {
            ThreeMfWriter.write(assembly, out);
        }

        /** Components come workpiece by workpiece. */
        @Override
        List<ReadMesh> read(byte[] file, AssemblySolids assembly) throws IOException {
            var built = new ReadThreeMf(file).built();
            var parts = Body.of(assembly).stream()
                    .flatMap(body -> body.parts().stream())
                    .toList();
            return assembly.solids().stream()
                    .map(placed -> built.get(parts.indexOf(placed)))
                    .toList();
        }

        @Override
        Vec3 shift(AssemblySolids assembly) {
            var boxes =
                    assembly.solids().stream().map(placed -> placed.inPlace().box());
            return Box3.around(boxes.toList()).min().times(-1);
        }
    },
    /**
     * A metre has no whole number of floats in 1/1024 mm: each coordinate is rounded to 24 binary digits, so by 2.4e-4 mm
     * at most below 4 m, and once more where the node puts it.
     */
    GLB(".glb", 5e-4) {
        @Override
        void write(AssemblySolids assembly, OutputStream out) throws IOException {
            GlbWriter.write(assembly, out);
        }

        @Override
        List<ReadMesh> read(byte[] file, AssemblySolids assembly) throws IOException {
            return ReadGlb.of(file);
        }
    };

    private final String ending;
    private final double rounding;

    MeshFormat(String ending, double rounding) {
        this.ending = ending;
        this.rounding = rounding;
    }

    abstract void write(AssemblySolids assembly, OutputStream out) throws IOException;

    /** In the order of the assembly's parts. */
    abstract List<ReadMesh> read(byte[] file, AssemblySolids assembly) throws IOException;

    /** By how much the whole file lies aside of where the assembly is, mm. */
    Vec3 shift(AssemblySolids assembly) {
        return Vec3.ZERO;
    }

    String ending() {
        return ending;
    }

    /** How far a corner may lie from where it belongs, mm. */
    double rounding() {
        return rounding;
    }

    byte[] bytes(AssemblySolids assembly) {
        var out = new ByteArrayOutputStream();
        try {
            write(assembly, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static Vector3D vector(Vec3 point) {
        return Vector3D.of(point.x(), point.y(), point.z());
    }
}
