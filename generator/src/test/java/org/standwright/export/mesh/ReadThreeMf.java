package org.standwright.export.mesh;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** A 3MF file, unpacked and parsed by Java's own libraries, by the rules of 3MF Core. */
final class ReadThreeMf {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private final Map<String, byte[]> entries = new LinkedHashMap<>();
    private final String start;

    ReadThreeMf(byte[] file) throws IOException {
        try (var zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        start = start();
    }

    Map<String, byte[]> entries() {
        return entries;
    }

    Element model() throws IOException {
        return xml(start).getDocumentElement();
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

    List<Element> all(String name) throws IOException {
        return all(model(), name).stream()
                .filter(element -> element.getNamespaceURI().equals(CORE))
                .toList();
    }

    /** The objects that have a mesh, each in its own frame. */
    List<ReadMesh> objects() throws IOException {
        return ThreeMfMeshes.of(entries.get(start)).objects();
    }

    /** One mesh for each component of each item of the build. */
    List<ReadMesh> built() throws IOException {
        return ThreeMfMeshes.of(entries.get(start)).built();
    }
}
