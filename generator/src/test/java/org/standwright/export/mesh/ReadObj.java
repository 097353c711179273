package org.standwright.export.mesh;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.obj.PolygonObjParser;

/**
 * The objects of an OBJ file, its words and numbers taken apart by commons-geometry.
 *
 * @param group of each object, and its material
 */
record ReadObj(List<ReadMesh> objects, List<String> groups, List<String> materials, String library) {
    static ReadObj of(byte[] file) {
        var parser = new PolygonObjParser(new StringReader(new String(file, StandardCharsets.US_ASCII)));
        var vertices = new ArrayList<Vector3D>();
        var names = new ArrayList<String>();
        var groups = new ArrayList<String>();
        var materials = new ArrayList<String>();
        var triangles = new ArrayList<List<ReadMesh.Triangle>>();
        var library = "";
        var group = "";
        while (parser.nextKeyword()) {
            switch (parser.getCurrentKeyword()) {
                case "mtllib" -> library = parser.readDataLine();
                case "g" -> group = parser.readDataLine();
                case "o" -> {
                    names.add(parser.readDataLine());
                    groups.add(group);
                    triangles.add(new ArrayList<>());
                }
                case "usemtl" -> materials.add(parser.readDataLine());
                case "v" -> vertices.add(parser.readVector());
                case "f" -> {
                    var face = parser.readFace().getVertices(vertices::get);
                    triangles
                            .get(triangles.size() - 1)
                            .add(new ReadMesh.Triangle(face.get(0), face.get(1), face.get(2)));
                }
                default -> throw new IllegalStateException("unknown word " + parser.getCurrentKeyword());
            }
        }
        var objects = new ArrayList<ReadMesh>();
        for (int i = 0; i < names.size(); i++) {
            objects.add(new ReadMesh(names.get(i), triangles.get(i)));
        }
        return new ReadObj(objects, groups, materials, library);
    }
}
