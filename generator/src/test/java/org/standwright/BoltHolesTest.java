package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.CarcassPlan;
import org.standwright.design.CuttingPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.StockPlan;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Reference;
import org.standwright.export.mesh.ObjWriter;
import org.standwright.file.StartingFile;
import org.standwright.make.Product;
import org.standwright.unit.Units;

/** The bolts' holes measured again in the OBJ file lie where the report says that the machine's bolts go. */
class BoltHolesTest {
    /** A hole is this much wider than its bolt, mm; common practice, no source. */
    private static final double PLAY = 1;
    /** Room beside the machine's base for a plan that takes it in any turn, mm. */
    private static final double BESIDE = 150;

    /** Preset stands as they are and in each turn; starting files as they are and turned. */
    static Stream<StandDesign> bolted() {
        var starting = Presets.machines()
                .map(machine -> StartingFile.forMachine(Presets.shipped(), machine, Units.MM))
                .map(text -> Presets.stand("starting.json", text));
        return Stream.concat(
                        Presets.stands().flatMap(design -> with(design, 0, 90, 180, 270)),
                        starting.flatMap(design -> with(design, 90)))
                .filter(design -> design.machine().mounting().isPresent())
                .filter(design -> design.machine().reference().kind() != Reference.Kind.WORKTOP);
    }

    private static Stream<StandDesign> with(StandDesign design, int... turns) {
        return Stream.concat(Stream.of(design), IntStream.of(turns).mapToObj(turn -> turned(design, turn)));
    }

    @ParameterizedTest
    @MethodSource("bolted")
    void lieWhereTheReportHasTheBolts(StandDesign design) throws IOException {
        var product = Product.checked(design);
        var report = Report.of(product);
        var bolts = report.list("/machine/bolts");
        double bolt = report.number("/design/machine/mounting/bolt");

        assertThat(bolts).isNotEmpty();
        for (var part : pierced(product)) {
            double z0 = coordinates(part).min().orElseThrow();
            double z1 = coordinates(part).max().orElseThrow();
            var holes = UprightHoles.in(part).stream()
                    .filter(hole -> Math.abs(hole.diameter() / (bolt + PLAY) - 1) < 0.025) // a polygon of its area
                    .toList();
            assertThat(holes).as(part.name()).hasSameSizeAs(bolts).allSatisfy(hole -> {
                assertThat(hole.z0()).isEqualTo(z0);
                assertThat(hole.z1()).isEqualTo(z1);
            });
            assertThat(bolts)
                    .as(part.name())
                    .allSatisfy(place -> assertThat(holes).anySatisfy(hole -> {
                        assertThat(hole.x()).isCloseTo(place.number("/x"), within(2.0 / 1024));
                        assertThat(hole.y()).isCloseTo(place.number("/y"), within(2.0 / 1024));
                    }));
        }
    }

    /** The layers of the worktop and the sub-top. */
    private static List<ObjMesh.Part> pierced(Product product) throws IOException {
        var out = new ByteArrayOutputStream();
        ObjWriter.write(product.solids(), "assembly-mm.mtl", out);
        var parts = ObjMesh.read(out.toString(StandardCharsets.US_ASCII)).parts().stream()
                .filter(part -> part.group().equals("worktop") || part.name().equals("sub-top"))
                .toList();
        assertThat(parts)
                .hasSize(((StandDesign) product.furniture().design()).worktop().layers() + 1);
        return parts;
    }

    private static DoubleStream coordinates(ObjMesh.Part part) {
        return part.triangles().stream().flatMap(List::stream).mapToDouble(ObjMesh.Vertex::z);
    }

    /**
     * One bay and nothing else cut out, so that no turn brings a bolt over a partition, cut from as many sheets as it
     * takes; off the middle, so that a mirrored place shows.
     */
    private static StandDesign turned(StandDesign design, int turn) {
        return Draft.of(design, draft -> {
            var base = draft.machine.base();
            double side = Math.max(base.width(), base.depth()) + 2 * BESIDE;
            draft.plan(side, Math.max(side, 600));
            draft.layout = turn < 180 ? Layout.MIRRORED : Layout.AS_WRITTEN;
            var none = OptionalDouble.empty();
            draft.place = new Place(
                    turn,
                    new Place.Margins(OptionalDouble.of(BESIDE), none, OptionalDouble.of(BESIDE - 40), none),
                    Optional.empty());
            draft.bays = List.of(Designs.bay(Designs.equal(1)));
            draft.cutouts = List.of();
            draft.carcass = backInOnePiece(draft.carcass);
            draft.cutting = CuttingPlan.PLAIN;
            draft.stock = StockPlan.NONE;
            draft.savings = Optional.empty();
            draft.workingHeight = new WorkingHeight.Given(draft.workingHeight.height());
        });
    }

    private static CarcassPlan backInOnePiece(CarcassPlan plan) {
        return new CarcassPlan(plan.sheet(), plan.back(), plan.housing(), plan.fit(), plan.joint());
    }
}
