package org.standwright.export.mesh;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** A 3MF file, unpacked and parsed by Java's own libraries, by the rules of 3MF Core. */
final class ReadThreeMf {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private final Map<String, byte[]> entries = new LinkedHashMap<>();
    private final Document model;

    ReadThreeMf(byte[] file) throws IOException {
        try (var zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        model = xml(start());
    }

    Map<String, byte[]> entries() {
        return entries;
    }

    Element model() {
        return model.getDocumentElement();
    }

    /** Where the package says that its model is. */
    private String start() throws IOException {
        var relation =
                all(xml("_rels/.rels").getDocumentElement(), "Relationship").get(0);
        return relation.getAttribute("Target").substring(1);
    }

    private Document xml(String name) throws IOException {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        try {
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(entries.get(name)));
        } catch (SAXException | ParserConfigurationException e) {
            throw new IOException(name, e);
        }
    }

    private static List<Element> all(Element parent, String name) {
        var nodes = parent.getElementsByTagNameNS("*", name);
        var found = new ArrayList<Element>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    List<Element> all(String name) {
        return all(model(), name).stream()
                .filter(element -> element.getNamespaceURI().equals(CORE))
                .toList();
    }

    /** The objects that have a mesh, each in its own frame. */
    List<ReadMesh> objects() {
        return all("object").stream()
                .filter(object -> !all(object, "mesh").isEmpty())
                .map(object -> mesh(object, AffineTransformMatrix3D.identity()))
                .toList();
    }

    /** One mesh for each component of each item of the build. */
    List<ReadMesh> built() {
        var objects = new HashMap<String, Element>();
        all("object").forEach(object -> objects.put(object.getAttribute("id"), object));
        return all("item").stream()
                .flatMap(item -> {
                    var shift = transform(item.getAttribute("transform"));
                    return all(objects.get(item.getAttribute("objectid")), "component").stream()
                            .map(component -> mesh(
                                    objects.get(component.getAttribute("objectid")),
                                    transform(component.getAttribute("transform"))
                                            .premultiply(shift)));
                })
                .toList();
    }

    /** The numbers of the format are columns of ours: its points are rows before the matrix. */
    private static AffineTransformMatrix3D transform(String text) {
        var m = Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
        return AffineTransformMatrix3D.of(m[0], m[3], m[6], m[9], m[1], m[4], m[7], m[10], m[2], m[5], m[8], m[11]);
    }

    private static ReadMesh mesh(Element object, AffineTransformMatrix3D transform) {
        var points = all(object, "vertex").stream()
                .map(v -> transform.apply(Vector3D.of(number(v, "x"), number(v, "y"), number(v, "z"))))
                .toList();
        var triangles = all(object, "triangle").stream()
                .map(t -> new ReadMesh.Triangle(
                        points.get((int) number(t, "v1")), points.get((int) number(t, "v2")), points.get((int)
                                number(t, "v3"))))
                .toList();
        return new ReadMesh(object.getAttribute("name"), triangles);
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
