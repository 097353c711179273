package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Side;

/** Whether what a machine's preset says about the machine agrees with itself. */
class MachinePresetsTest {
    private static final PresetLibrary LIBRARY = SampleDesign.builtIn();

    static Stream<String> machines() {
        return LIBRARY.list(FileKind.MACHINE).stream().map(Preset::name);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void saysThatItsFiguresAreOnlyTypical(String name) {
        assertThat(file(name).json().root().path("note").asText())
                .startsWith("Figures are typical, from memory: measure your own.");
    }

    @ParameterizedTest
    @MethodSource("machines")
    void keepsItsBaseAndItsTableWithinItsEnvelope(String name) {
        var machine = read(name);
        var envelope = machine.envelope();

        assertThat(envelope.left().orElseThrow() + machine.base().width()).isLessThanOrEqualTo(envelope.width() + 1e-9);
        assertThat(envelope.front().orElseThrow() + machine.base().depth())
                .isLessThanOrEqualTo(envelope.depth() + 1e-9);
        assertThat(machine.reference().height()).isLessThan(envelope.height());
        assertThat(machine.reference().highest().orElse(0)).isLessThan(envelope.height());
    }

    @ParameterizedTest
    @MethodSource("machines")
    void hasItsCentreOfMassOverItsBaseAndInItsEnvelope(String name) {
        var machine = read(name);
        var centre = machine.centreOfMass().orElseThrow();

        assertThat(centre.x() / machine.base().width()).isBetween(0.3, 0.7);
        assertThat(centre.y() / machine.base().depth()).isBetween(0.3, 0.7);
        assertThat(centre.highest()).isLessThan(machine.envelope().height());
        if (!name.equals("router-in-plate")) {
            assertThat(centre.lowest()).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("machines")
    void keepsItsBoltsOnItsBase(String name) {
        var machine = read(name);
        machine.mounting().ifPresent(mounting -> {
            for (var hole : mounting.holes()) {
                double x = mounting.origin().x() + hole.x();
                double y = mounting.origin().y() + hole.y();
                double edge = 1.5 * mounting.bolt();
                assertThat(x).isBetween(edge, machine.base().width() - edge);
                assertThat(y).isBetween(edge, machine.base().depth() - edge);
            }
            assertThat(mounting.holes()).hasSize(4).doesNotHaveDuplicates();
        });
    }

    @ParameterizedTest
    @MethodSource("machines")
    void isWorkedFromTheFrontAndHasACord(String name) {
        var machine = read(name);

        assertThat(machine.operator()).isEqualTo(Side.FRONT);
        assertThat(machine.reachable()).contains(Side.FRONT).doesNotHaveDuplicates();
        assertThat(machine.cord()).isPresent();
        assertThat(machine.workingForce().orElseThrow().height())
                .isLessThanOrEqualTo(machine.envelope().height());
    }

    @ParameterizedTest
    @MethodSource("machines")
    void hasItsDustPortNoFurtherOffThanAHoseIsThick(String name) {
        var machine = read(name);
        machine.dustPort().ifPresent(port -> {
            double left = -machine.envelope().left().orElseThrow();
            double front = -machine.envelope().front().orElseThrow();
            assertThat(port.at().x())
                    .isBetween(left - port.hose(), left + machine.envelope().width() + port.hose());
            assertThat(port.at().y())
                    .isBetween(front - port.hose(), front + machine.envelope().depth() + port.hose());
            assertThat(port.at().z()).isBetween(0.0, machine.envelope().height());
        });
    }

    @Test
    void comeInInchesAsOftenAsInMillimetres() {
        long inches = machines()
                .filter(name -> file(name).json().root().path("unit").asText().equals("in"))
                .count();

        assertThat((double) inches / machines().count()).isCloseTo(0.5, within(0.1));
    }

    /** Typical ranges, from memory, unconfirmed: width and depth of the base in mm, mass in kg. */
    @ParameterizedTest
    @CsvSource({
        "thickness-planer, 500, 620, 330, 450, 29, 45",
        "drill-press, 200, 310, 330, 460, 14, 45",
        "drill-press-330, 200, 310, 330, 460, 14, 45",
        "bandsaw, 300, 400, 250, 400, 18, 40",
        "router-table, 600, 610, 400, 460, 10, 30",
        "jobsite-table-saw, 560, 690, 560, 760, 20, 45",
        "contractor-table-saw, 500, 600, 500, 600, 90, 160",
        "mitre-saw, 450, 650, 300, 550, 15, 30",
        "spindle-sander, 380, 500, 380, 500, 13, 35",
        "belt-disc-sander, 400, 600, 250, 450, 15, 30",
        "jointer, 750, 1200, 250, 350, 16, 30",
        "bench-grinder, 150, 200, 200, 300, 8, 20",
        "scroll-saw, 250, 330, 450, 700, 12, 40",
        "mortiser, 300, 350, 400, 450, 20, 40",
        "mini-lathe, 700, 900, 200, 250, 25, 55",
        "compressor, 400, 480, 400, 480, 13, 18",
        "shop-vacuum, 480, 560, 480, 560, 8, 20",
        "dust-collector, 500, 600, 700, 950, 35, 60"
    })
    void isOfAUsualSizeAndMass(
            String name, double narrow, double wide, double shallow, double deep, double light, double heavy) {
        var machine = read(name);

        assertThat(machine.base().width()).isBetween(narrow, wide);
        assertThat(machine.base().depth()).isBetween(shallow, deep);
        assertThat(machine.mass()).isBetween(light, heavy);
    }

    /** Typical ranges, from memory, unconfirmed: table or spindle above the base in mm. */
    @ParameterizedTest
    @CsvSource({
        "thickness-planer, TABLE, 75, 130",
        "drill-press, MOVABLE_TABLE, 250, 450",
        "drill-press-330, MOVABLE_TABLE, 250, 450",
        "bandsaw, TABLE, 250, 330",
        "router-table, TABLE, 280, 380",
        "jobsite-table-saw, TABLE, 290, 350",
        "mitre-saw, TABLE, 85, 130",
        "spindle-sander, TABLE, 300, 460",
        "belt-disc-sander, TABLE, 150, 330",
        "jointer, TABLE, 200, 300",
        "bench-grinder, SPINDLE, 130, 200",
        "scroll-saw, TABLE, 150, 300",
        "mini-lathe, SPINDLE, 200, 260",
        "router-in-plate, WORKTOP, 0, 0"
    })
    void hasItsTableAtAUsualHeight(String name, Reference.Kind kind, double least, double most) {
        var reference = read(name).reference();

        assertThat(reference.kind()).isEqualTo(kind);
        assertThat(reference.height()).isBetween(least, most);
    }

    private static Machine read(String name) {
        return (Machine) file(name).record();
    }

    private static ReadFile file(String name) {
        return LIBRARY.read(LIBRARY.find(FileKind.MACHINE, name).orElseThrow());
    }
}
