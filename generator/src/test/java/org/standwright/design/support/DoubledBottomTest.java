package org.standwright.design.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.CASTERS;
import static org.standwright.design.Designs.LEVELERS;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.Support.Bed;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Range;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.Hole;
import org.standwright.solid.ClosedSolids;

class DoubledBottomTest {
    private static final Support DOUBLED = new Support.Casters(CASTERS.caster(), Optional.empty(), Bed.DOUBLED_BOTTOM);

    @Test
    void liesInTwoLayersOverTheWholePlan() {
        var stand = built(DOUBLED);

        assertThat(stand.stack().terms()).anySatisfy(term -> {
            assertThat(term.name()).isEqualTo("doubled bottom (two layers)");
            assertThat(term.height()).isEqualTo(36);
        });
        assertThat(stand.stack().sum()).isEqualTo(900);
        assertThat(layer(stand, "base lower layer").box().min().z()).isEqualTo(125);
        assertThat(layer(stand, "base upper layer").box().max().z()).isEqualTo(161);
        assertThat(layer(stand, "base upper layer").box().size().x()).isEqualTo(720);
        assertThat(layer(stand, "base upper layer").box().size().y()).isEqualTo(560);
    }

    @Test
    void keepsAllApartWithEveryKindOfFoot() {
        for (var support : List.of(
                DOUBLED,
                Castered.mixed(Bed.DOUBLED_BOTTOM),
                new Support.Levelers(LEVELERS.leveler(), Bed.DOUBLED_BOTTOM))) {
            for (var mount : Mount.values()) {
                Clearances.check(StandBuilder.build(design(support, mount)).assembly());
            }
        }
    }

    @Test
    void letsAllBoltsThroughBothLayersAndTheirHeadsIntoTheUpperOne() {
        var stand = built(Castered.mixed(Bed.DOUBLED_BOTTOM));

        assertThat(holes(layer(stand, "base lower layer"), "caster bolt")).hasSize(16);
        assertThat(holes(layer(stand, "base upper layer"), "caster bolt")).hasSize(16);
        assertThat(holes(layer(stand, "base lower layer"), "recess for head and washer"))
                .isEmpty();
        assertThat(holes(layer(stand, "base upper layer"), "recess for head and washer"))
                .hasSize(16);
    }

    /** A screw into a recess would hold nothing. */
    @Test
    void isScrewedThroughTheBottomBesideTheRecesses() {
        var stand = built(DOUBLED);
        var recesses = holes(layer(stand, "base upper layer"), "recess for head and washer");
        double housedLeft = 18 - 6;
        var screws = holes(layer(stand, "bottom"), "doubled bottom screw");

        assertThat(screws)
                .hasSizeGreaterThan(8)
                .allSatisfy(screw -> assertThat(recesses)
                        .allSatisfy(recess -> assertThat(
                                        StrictMath.hypot(screw.x() + housedLeft - recess.x(), screw.y() - recess.y()))
                                .isGreaterThanOrEqualTo(recess.diameter() / 2 + screw.diameter() / 2)));
        assertThat(stand.assembly().hardware())
                .anyMatch(line ->
                        line.count() == screws.size() && line.use().equals("doubled bottom, down through the bottom"));
    }

    @Test
    void isMadeOfClosedSolids() {
        ClosedSolids.check(built(Castered.mixed(Bed.DOUBLED_BOTTOM)).assembly());
    }

    @Test
    void isRefusedOfLayersThatAreTooThin() {
        var thin = Draft.of(
                design(DOUBLED, Mount.OVERLAY),
                draft -> draft.carcass =
                        new CarcassPlan(BOARD_12, draft.carcass.back(), 4, draft.carcass.fit(), draft.carcass.joint()));

        assertThatThrownBy(() -> StandBuilder.build(thin))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/carcass/sheet"))
                .hasMessageContaining("A doubled bottom of two layers of board 12 is 24 mm thick");
    }

    @Test
    void isRefusedWhenALayerIsLargerThanASheet() {
        var deep = Draft.of(design(DOUBLED, Mount.OVERLAY), draft -> draft.plan(720, 1300));

        assertThatThrownBy(() -> StandBuilder.build(deep))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Part 'base lower layer' is cut 720 mm x 1300 mm, larger than a sheet");
    }

    /** Two strips of 80 mm need a plan 160 mm wide; two feet of 40 mm under a doubled bottom need 120 mm. */
    @Test
    void isTheWayOutWhereStripsAreTooWide() {
        var leveler = new Leveler("leveler M8", new Range(20, 30, 40), 10, 20, 40, 100, 0.15);
        var strips = narrow(new Support.Levelers(leveler, Bed.STRIPS));

        assertThatThrownBy(() -> StandBuilder.build(strips))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/support/bed"))
                .hasMessageContaining("Two strips of 80 mm do not lie side by side under a plan 150 mm wide.")
                .hasMessageContaining("Use a doubled-bottom. Or make the plan 160 mm wide.");
        var doubled = StandBuilder.build(narrow(new Support.Levelers(leveler, Bed.DOUBLED_BOTTOM)));
        Clearances.check(doubled.assembly());
        StandBuilder.build(Draft.of(strips, draft -> draft.plan(160, 560)));
    }

    private static StandDesign narrow(Support support) {
        return Draft.of(
                Designs.stand(900, support, Mount.OVERLAY, List.of(bay(equal(3)))), draft -> draft.plan(150, 560));
    }

    private static Stand built(Support support) {
        return StandBuilder.build(design(support, Mount.OVERLAY));
    }

    private static StandDesign design(Support support, Mount mount) {
        return Designs.stand(900, support, mount, List.of(bay(400, equal(3)), bay(equal(3))));
    }

    private static PlacedPart layer(Stand stand, String label) {
        return stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static List<Hole> holes(PlacedPart placed, String purpose) {
        return placed.part().features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(candidate -> candidate.purpose().equals(purpose))
                .toList();
    }
}
