package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.standwright.solid.AssemblySolids;

/**
 * 3MF (3MF Core 1.4): a ZIP with a model in millimetres with z up. Each different workpiece is one object in its own
 * frame, and the assembly is one object that puts them where they belong.
 */
public final class ThreeMfWriter {
    private static final String MODEL = "3D/3dmodel.model";
    private static final String TYPES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
            <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
            <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
            </Types>
            """;
    private static final String RELATIONS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
            <Relationship Id="model" Target="/%s" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
            </Relationships>
            """.formatted(MODEL);

    private ThreeMfWriter() {}

    public static void write(AssemblySolids assembly, OutputStream out) throws IOException {
        var zip = new StoredZip(out);
        zip.add("[Content_Types].xml", bytes(TYPES));
        zip.add("_rels/.rels", bytes(RELATIONS));
        zip.add(MODEL, bytes(new ThreeMfModel(assembly).text()));
        zip.finish();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
