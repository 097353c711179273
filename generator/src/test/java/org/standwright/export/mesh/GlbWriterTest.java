package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.javagl.jgltf.model.AccessorDatas;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.v2.MaterialModelV2;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.export.SampleAssembly;
import org.standwright.part.Board;
import org.standwright.part.Colour;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

/** Rules of glTF 2.0 (references, section 8, [C]). */
class GlbWriterTest {
    private final AssemblySolids solids = AssemblySolids.of(SampleAssembly.twoSidesAndABack());
    private final byte[] file = MeshFormat.GLB.bytes(solids);

    @Test
    void everyPartIsANodeBelowTheThingThatItMovesWith() throws IOException {
        var groups = model().getSceneModels().get(0).getNodeModels();

        assertThat(groups).extracting(NodeModel::getName).containsExactly("carcass", "rest");
        assertThat(names(groups.get(0))).containsExactly("left side", "right/side");
        assertThat(names(groups.get(1))).containsExactly("right side", "drawer");
    }

    @Test
    void partsOfOneWorkpieceShareTheirMesh() throws IOException {
        var model = model();
        var carcass = model.getSceneModels().get(0).getNodeModels().get(0).getChildren();

        assertThat(model.getMeshModels()).hasSize(3);
        assertThat(carcass.get(0).getMeshModels()).isEqualTo(carcass.get(1).getMeshModels());
        assertThat(model.getMeshModels().get(0).getName()).isEqualTo("left side and 1 more like it");
    }

    @Test
    void equalWorkpiecesOfTwoColoursAreTwoMeshes() throws IOException {
        var red = coloured("red", new Colour(255, 0, 0));
        var two = MeshNames.assembly("two colours", List.of(coloured("plain", Material.PLAIN), red));

        assertThat(two.solids().get(0).solid()).isSameAs(two.solids().get(1).solid());
        assertThat(ReadGlb.model(MeshFormat.GLB.bytes(two)).getMeshModels()).hasSize(2);
    }

    private static Part coloured(String name, Colour colour) {
        var material = new Material(name, 18, 700, Grain.NONE, OptionalDouble.empty(), colour, Board.PLYWOOD.usual());
        return Part.blank(name, material, 300, 200);
    }

    @Test
    void coloursAreSharesOfLight() throws IOException {
        var material = (MaterialModelV2) model().getMaterialModels().get(0);

        // #d9b982 by the curve of sRGB, worked out by hand: ((0.851 + 0.055) / 1.055)^2.4 and so on
        assertThat(material.getBaseColorFactor())
                .containsExactly(new float[] {0.6939f, 0.4851f, 0.2232f, 1}, offset(1e-4f));
        assertThat(material.getMetallicFactor()).isZero();
        assertThat(material.getName()).isEqualTo("birch plywood");
    }

    /** IEC 61966-2-1: black, the end of the straight part, half the code, white; from memory. */
    @Test
    void theCurveOfColoursIsThatOfScreens() {
        assertThat(LinearColour.linear(0)).isZero();
        assertThat(LinearColour.linear(0.04045)).isCloseTo(0.0031308, within(1e-7));
        assertThat(LinearColour.linear(0.5)).isCloseTo(0.2140411, within(1e-7));
        assertThat(LinearColour.linear(1)).isEqualTo(1);
    }

    @Test
    void eachPositionTellsItsLeastAndGreatestValueToTheLastBit() throws IOException {
        var accessors = json(file).get("accessors");
        var meshes = model().getMeshModels();
        for (int i = 0; i < meshes.size(); i++) {
            var primitive = meshes.get(i).getMeshPrimitiveModels().get(0);
            var data = AccessorDatas.createFloat(primitive.getAttributes().get("POSITION"));
            for (int axis = 0; axis < 3; axis++) {
                var told = accessors.get(2 * i);
                assertThat(told.get("min").get(axis).doubleValue()).isEqualTo(data.computeMin()[axis]);
                assertThat(told.get("max").get(axis).doubleValue()).isEqualTo(data.computeMax()[axis]);
            }
        }
    }

    @Test
    void isInMetresWithYUp() throws IOException {
        var drawer = AccessorDatas.createFloat(model().getMeshModels()
                .get(2)
                .getMeshPrimitiveModels()
                .get(0)
                .getAttributes()
                .get("POSITION"));
        var box = solids.solids().get(3).solid().box();

        assertThat(drawer.computeMax()[0]).isEqualTo((float) (box.max().x() / 1000));
        assertThat(drawer.computeMax()[1]).isEqualTo((float) (box.max().z() / 1000));
        assertThat(drawer.computeMin()[2]).isEqualTo((float) (-box.max().y() / 1000));
    }

    @Test
    void saysWhoMadeItAndHasNoNormals() throws IOException {
        var json = json(file);

        assertThat(json.at("/asset/version").asText()).isEqualTo("2.0");
        assertThat(json.at("/asset/generator").asText()).isEqualTo("Standwright");
        assertThat(json.at("/scenes/0/name").asText()).isEqualTo("Wäller's stand");
        assertThat(json.at("/meshes/0/primitives/0/attributes").size()).isEqualTo(1);
    }

    @Test
    void withoutPartsItIsAnEmptyScene() throws IOException {
        var none = MeshFormat.GLB.bytes(new AssemblySolids("nothing", Fineness.FILE, List.of()));

        assertThat(json(none).has("meshes")).isFalse();
        assertThat(ReadGlb.of(none)).isEmpty();
    }

    private static JsonNode json(byte[] file) throws IOException {
        int length = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
        return new ObjectMapper().readTree(file, 20, length);
    }

    private GltfModel model() throws IOException {
        return ReadGlb.model(file);
    }

    private static List<String> names(NodeModel group) {
        return group.getChildren().stream().map(NodeModel::getName).toList();
    }
}
