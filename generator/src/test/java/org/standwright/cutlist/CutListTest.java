package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.unit.Units;

class CutListTest {
    private static final Material BOARD = new Material("board", 18, 680, Grain.ALONG_LENGTH);
    private static final Material OAK = Material.bar("oak strip", 40, 20, 700);
    private static final Optional<Banding> TAPE = Optional.of(new Banding("birch tape", 0.5));

    private static CutList list(Part... parts) {
        var placed = new ArrayList<PlacedPart>();
        for (var part : parts) {
            placed.add(new PlacedPart(
                    part.name() + " " + (placed.size() + 1),
                    part,
                    new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, 100 * placed.size()))));
        }
        return CutList.of(new Assembly("sample", List.of(Group.fixed("all", placed, List.of())), List.of()), Units.MM);
    }

    @Test
    void keepsBarsApartFromSheets() {
        var runner = Part.blank("runner", OAK, 500, 40);
        var list = list(Part.blank("shelf", BOARD, 600, 300), runner, runner);

        assertThat(list.sheetLines()).extracting(CutLine::label).containsExactly("A");
        assertThat(list.bars()).hasSize(1);
        assertThat(list.bars().get(0).count()).isEqualTo(2);
        assertThat(list.bars().get(0).length(3)).isCloseTo(1006, within(1e-9));
    }

    /** By hand: round a door 2 × 400 + 2 × 300, along a shelf 600, two of each: 4000 mm, with a tenth over 4.4 m. */
    @Test
    void addsUpTheEdgesThatOneTapeCovers() {
        var door = Part.blank("door", BOARD, 400, 300).banded(Bands.around(TAPE));
        var shelf = Part.blank("shelf", BOARD, 600, 300).banded(Bands.atY0(TAPE));
        var list = list(door, door, shelf, shelf);

        assertThat(list.edgings()).hasSize(1);
        assertThat(list.edgings().get(0).length()).isCloseTo(4000, within(1e-9));
        assertThat(list.hardware())
                .containsExactly(new HardwareLine(
                        "birch tape: 4.4 m with 10 % over", 1, List.of("edges of door", "edges of shelf")));
    }

    @Test
    void saysOfEveryLineWhereItsReferenceLiesAndWhichEdgesAreBanded() {
        var shelf = Part.blank("shelf", BOARD, 600, 300).banded(Bands.atY0(TAPE));

        assertThat(list(shelf).lines().get(0).notes())
                .containsExactly(
                        "as shelf 1: x from the left end, y from the front edge, show face up",
                        "banded with birch tape: front edge");
    }
}
