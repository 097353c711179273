package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Loads;
import org.standwright.design.Mount;
import org.standwright.design.Place;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;

/** What weighs on a stand, and where. The masses of boards by themselves are tested with the solids. */
class LoadedStandTest {
    /** 720 x 560, 18 mm boards, a planer of 38 kg on a base of 560 x 360. */
    private static final StandDesign PLAIN =
            Designs.stand(900, Designs.LEVELERS, Mount.OVERLAY, List.of(bay(equal(3))));

    @ParameterizedTest
    @MethodSource("org.standwright.Presets#stands")
    void weighsAsMuchWoodAsTheSolids(StandDesign design) {
        var loaded = Stands.loaded(design);
        var wood = AssemblySolids.of(loaded.stand().assembly()).massProperties();
        var centre = loaded.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.BOARD)
                .map(weight -> weight.centre().times(weight.mass()))
                .reduce(Vec3.ZERO, Vec3::plus)
                .times(1 / wood.mass());

        assertThat(loaded.mass(Weight.Kind.BOARD)).isCloseTo(wood.mass(), within(1e-9));
        assertThat(centre.x()).isCloseTo(wood.centre().x(), within(1e-6));
        assertThat(centre.y()).isCloseTo(wood.centre().y(), within(1e-6));
        assertThat(centre.z()).isCloseTo(wood.centre().z(), within(1e-6));
        assertThat(loaded.mass(Weight.Kind.MACHINE)).isEqualTo(design.machine().mass());
    }

    /** 500 kg/m³ of the usable inside, in its middle (EN 14749:2016, as quoted); closed, so within the drawer's box. */
    @Test
    void fillsDrawersToTheirUsableInside() {
        var loaded = Stands.loaded(PLAIN);
        var drawer = loaded.stand().bays().get(0).drawers().get(1);
        var box = loaded.stand().assembly().parts().stream()
                .filter(part -> part.label().equals("drawer 1.2 bottom"))
                .findFirst()
                .orElseThrow()
                .box();
        var contents = only(loaded, "contents of drawer 1.2");

        double volume = drawer.inside().width()
                * drawer.inside().depth()
                * drawer.inside().height();
        assertThat(contents.mass()).isCloseTo(500e-9 * volume, within(1e-9));
        assertThat(contents.group()).isEqualTo("drawer 1.2");
        assertThat(contents.centre().y()).isEqualTo(box.centre().y());
        assertThat(contents.centre().z() - box.max().z())
                .isCloseTo(drawer.inside().height() / 2, within(1e-9));
    }

    /** A pair of slides of 0.14 kg for every 50 mm; half of it stays when the drawer opens. */
    @Test
    void sharesSlidesBetweenCarcassAndDrawer() {
        var loaded = Stands.loaded(PLAIN);
        double length = loaded.stand()
                .bays()
                .get(0)
                .drawers()
                .get(0)
                .slide()
                .orElseThrow()
                .length();
        var slides = loaded.weights().stream()
                .filter(weight -> weight.what().startsWith("slide 1.1"))
                .toList();

        assertThat(slides).hasSize(4);
        assertThat(slides)
                .filteredOn(weight -> weight.group().equals("drawer 1.1"))
                .hasSize(2);
        assertThat(slides.stream().mapToDouble(Weight::mass).sum()).isCloseTo(0.14 * length / 50, within(1e-9));
    }

    /** A floor of 684 x 554 mm and a shelf: at most 195 kg/m², and no denser than 500 kg/m³. */
    @Test
    void putsThingsOnFloorsAndShelves() {
        var open = new Content.Open(OptionalDouble.empty(), Optional.of(new Shelves(Shelves.Kind.ADJUSTABLE, 1)));
        var loaded = Stands.loaded(Draft.of(
                PLAIN, draft -> draft.bays = List.of(new Bay(OptionalDouble.empty(), List.of(open)))));
        var things = loaded.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.CONTENTS)
                .toList();
        var opening = loaded.stand().bays().get(0).opening();
        double area = opening.width() * loaded.stand().carcass().size().y() * 1e-6;

        assertThat(things)
                .extracting(Weight::what)
                .containsExactly("things on the floor of bay 1", "things on the shelf 1 of bay 1");
        assertThat(things).allSatisfy(weight -> {
            assertThat(weight.mass()).isPositive().isLessThanOrEqualTo(Math.min(area * 195, 90.7) + 1e-9);
            assertThat(weight.centre().z()).isBetween(opening.y0(), opening.y1());
        });
        double volume = opening.width() * loaded.stand().carcass().size().y() * opening.height() * 1e-9;
        assertThat(loaded.mass(Weight.Kind.CONTENTS)).isLessThanOrEqualTo(volume * 500);
    }

    /** Base of 560 x 360 in the middle of 720 x 560; 100 from its left and 50 from its front, turned with the machine. */
    @ParameterizedTest
    @CsvSource({"0, 180, 150", "90, 490, 100", "180, 540, 410", "270, 230, 460"})
    void turnsTheCentreOfMassWithTheMachine(int turn, double x, double y) {
        var loaded = Stands.loaded(Draft.of(PLAIN, draft -> {
            draft.place = new Place(turn, draft.place.margins(), Optional.empty());
            draft.machine = Draft.OfMachine.of(
                    draft.machine, machine -> machine.centreOfMass = Optional.of(new CentreOfMass(100, 50, 120, 200)));
        }));
        var machine = only(loaded, loaded.design().machine().name());

        assertThat(machine.centre().x()).isCloseTo(x, within(1e-9));
        assertThat(machine.centre().y()).isCloseTo(y, within(1e-9));
        assertThat(machine.centre().z())
                .isCloseTo(loaded.stand().worktop().max().z() + PLAIN.machine().feet() + 200, within(1e-9));
    }

    /** Two thirds of the height, over the middle of the base: common practice, no source. */
    @Test
    void putsAnUnknownCentreOfMassHigh() {
        var loaded = Stands.loaded(Draft.of(
                PLAIN,
                draft -> draft.machine =
                        Draft.OfMachine.of(draft.machine, machine -> machine.centreOfMass = Optional.empty())));
        var whole = loaded.stand().machine().orElseThrow().whole();
        var centre = only(loaded, loaded.design().machine().name()).centre();

        assertThat(centre.z() - whole.min().z()).isCloseTo(whole.size().z() * 2 / 3, within(1e-9));
    }

    @Test
    void weighsFeetAndBallast() {
        var loaded = Stands.loaded(Draft.of(PLAIN, draft -> draft.steady = Steady.BY_ITSELF.with(25)));

        assertThat(loaded.weights().stream()
                        .filter(weight -> weight.kind() == Weight.Kind.HARDWARE
                                && weight.what().contains("leveler"))
                        .mapToDouble(Weight::mass)
                        .sum())
                .isCloseTo(4 * 0.15, within(1e-9));
        assertThat(only(loaded, "ballast").mass()).isEqualTo(25);
        assertThat(only(loaded, "ballast").centre().z())
                .isEqualTo(loaded.stand().carcass().min().z());
    }

    @Test
    void carriesNothingWhereTheDesignSaysSo() {
        var loaded = Stands.loaded(Draft.of(PLAIN, draft -> draft.loads = new Loads(0, 0, 750, 150)));

        assertThat(loaded.mass(Weight.Kind.CONTENTS)).isZero();
    }

    private static Weight only(LoadedStand loaded, String what) {
        return loaded.weights().stream()
                .filter(weight -> weight.what().equals(what))
                .findFirst()
                .orElseThrow();
    }
}
