package org.standwright;

import java.util.ArrayList;
import java.util.List;

/** The objects of a Wavefront OBJ text, read without any code of the writer. */
record ObjMesh(List<Part> parts) {
    record Vertex(double x, double y, double z) {}

    /** One object: its name, its group and its triangles. */
    record Part(String name, String group, List<List<Vertex>> triangles) {}

    static ObjMesh read(String text) {
        var vertices = new ArrayList<Vertex>();
        var parts = new ArrayList<Part>();
        String group = "";
        for (var line : text.split("\n")) {
            var words = line.split(" ");
            switch (words[0]) {
                case "g" -> group = words[1];
                case "o" -> parts.add(new Part(words[1], group, new ArrayList<>()));
                case "v" -> vertices.add(new Vertex(number(words[1]), number(words[2]), number(words[3])));
                case "f" ->
                    parts.get(parts.size() - 1)
                            .triangles()
                            .add(List.of(
                                    vertices.get(index(words[1])),
                                    vertices.get(index(words[2])),
                                    vertices.get(index(words[3]))));
                default -> {}
            }
        }
        return new ObjMesh(parts);
    }

    private static double number(String word) {
        return Double.parseDouble(word);
    }

    private static int index(String word) {
        return Integer.parseInt(word) - 1;
    }
}
