package org.standwright.export.mesh;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** The meshes and components of a 3MF's model, by Java's own reader of XML. */
final class ThreeMfMeshes {
    private record Reference(String object, AffineTransformMatrix3D transform) {}

    private static final class Read {
        private final String name;
        private final List<Vector3D> points = new ArrayList<>();
        private final List<ReadMesh.Triangle> triangles = new ArrayList<>();
        private final List<Reference> components = new ArrayList<>();

        private Read(String name) {
            this.name = name;
        }
    }

    private final Map<String, Read> objects = new LinkedHashMap<>();
    private final List<Reference> items = new ArrayList<>();
    private final XMLStreamReader xml;
    private Read object;

    private ThreeMfMeshes(byte[] model) throws XMLStreamException {
        xml = XMLInputFactory.newFactory().createXMLStreamReader(new ByteArrayInputStream(model));
    }

    static ThreeMfMeshes of(byte[] model) throws IOException {
        try {
            var meshes = new ThreeMfMeshes(model);
            while (meshes.xml.hasNext()) {
                if (meshes.xml.next() == XMLStreamReader.START_ELEMENT) {
                    meshes.element();
                }
            }
            return meshes;
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    private void element() {
        switch (xml.getLocalName()) {
            case "object" -> {
                object = new Read(text("name"));
                objects.put(text("id"), object);
            }
            case "vertex" -> object.points.add(Vector3D.of(number("x"), number("y"), number("z")));
            case "triangle" -> object.triangles.add(new ReadMesh.Triangle(point("v1"), point("v2"), point("v3")));
            case "component" -> object.components.add(reference());
            case "item" -> items.add(reference());
            default -> {}
        }
    }

    private String text(String attribute) {
        return xml.getAttributeValue(null, attribute);
    }

    private double number(String attribute) {
        return Double.parseDouble(text(attribute));
    }

    private Vector3D point(String attribute) {
        return object.points.get(Integer.parseInt(text(attribute)));
    }

    /** The numbers of the format are columns of ours: its points are rows before the matrix. */
    private Reference reference() {
        var m = Stream.of(text("transform").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new Reference(
                text("objectid"),
                AffineTransformMatrix3D.of(m[0], m[3], m[6], m[9], m[1], m[4], m[7], m[10], m[2], m[5], m[8], m[11]));
    }

    List<ReadMesh> objects() {
        return objects.values().stream()
                .filter(read -> !read.triangles.isEmpty())
                .map(read -> new ReadMesh(read.name, read.triangles))
                .toList();
    }

    List<ReadMesh> built() {
        return items.stream().flatMap(this::built).toList();
    }

    private Stream<ReadMesh> built(Reference item) {
        return objects.get(item.object).components.stream().map(component -> {
            var read = objects.get(component.object);
            var whole = component.transform.premultiply(item.transform);
            var triangles = read.triangles.stream()
                    .map(t -> new ReadMesh.Triangle(whole.apply(t.a()), whole.apply(t.b()), whole.apply(t.c())))
                    .toList();
            return new ReadMesh(read.name, triangles);
        });
    }
}
