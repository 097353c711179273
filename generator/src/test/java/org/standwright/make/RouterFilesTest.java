package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.router.Lie;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.RouterPlan;
import org.standwright.router.SampleBoards;
import org.standwright.router.SampleRouters;
import org.standwright.unit.Units;

class RouterFilesTest {
    private static final Material PLY = new Material("Birch ply, " + "very ".repeat(30) + "good", 18, 700, Grain.NONE);

    @Test
    void numbersBoardsAndSaysWhichSideIsFirst() throws IOException {
        var plain = Part.blank("shelf", PLY, 400, 300);
        var both = plain.with(Channel.across(Face.SHOW, 50, 68, 300, 6), Channel.across(Face.BENCH, 200, 218, 300, 6));
        var plan = new RouterPlan(
                SampleRouters.router(Router.Relief.DOG_BONE),
                List.of(new RouterPlan.MaterialSheets(PLY, List.of(sheet(plain), sheet(both)))));
        var files = RouterFiles.of(plan, "Stand", Units.MM);

        assertThat(files.stream().map(OutputFile::name))
                .allMatch(name -> name.startsWith("router/"))
                .doesNotHaveDuplicates()
                .hasSize(7)
                .anyMatch(name -> name.matches("router/01-top-board-birch-ply-.*\\.dxf"))
                .anyMatch(name -> name.matches("router/02-first-bottom-board-birch-ply-.*\\.dxf"))
                .anyMatch(name -> name.matches("router/02-then-top-board-birch-ply-.*\\.svg"))
                .contains("router/legend.txt");
        assertThat(text(files.get(files.size() - 1)))
                .contains("sheet 1 of 2", "sheet 2 of 2", "TWO SIDES", "This is a drawing, no machine code");
        for (var file : files) {
            assertThat(text(file)).isNotEmpty().isEqualTo(text(file));
        }
    }

    /** Two thicknesses of one material, and a board that bears its material's name with its size. */
    @Test
    void callsBoardsByTheirOwnNames() throws IOException {
        var ply = new Material("Birch ply", 18, 700, Grain.NONE);
        var plain = Part.blank("shelf", ply, 400, 300);
        var sheets = Stream.of("Left over", "Birch ply, 800 mm x 600 mm", "Birch ply")
                .map(name -> new StockSheet(
                        name, ply, 800, 600, 18, OptionalInt.empty(), Optional.empty(), StockSheet.Source.BOUGHT))
                .map(board -> new RoutedSheet(
                        board, List.of(new RoutedPiece("A", plain, new Lie(false, 0, new Vec2(50, 50))))))
                .toList();
        var plan = new RouterPlan(
                SampleRouters.router(Router.Relief.NONE), List.of(new RouterPlan.MaterialSheets(ply, sheets)));
        var files = RouterFiles.of(plan, "Stand", Units.MM);

        assertThat(files.stream().map(OutputFile::name))
                .contains(
                        "router/01-top-left-over-birch-ply.dxf",
                        "router/02-top-birch-ply-800-mm-x-600-mm.dxf",
                        "router/03-top-birch-ply.dxf");
        assertThat(text(files.get(files.size() - 1)))
                .contains("Stand: 01 Left over, Birch ply, sheet 1 of 3\n")
                .contains("board: Birch ply, 800 mm x 600 mm, 18 mm thick as measured")
                .contains("board: Birch ply, 800 x 600 mm, 18 mm thick as measured");
    }

    /** Its file of parts' drawings is called so too. */
    @Test
    void namesTheDrawingOfWhatIsMadeAfterTheTrim() throws IOException {
        var layer = Part.blank("worktop upper layer", PLY, 400, 300)
                .with(Hole.through(50, 50, 9, "bolt"))
                .cutOver(3);
        var plan = new RouterPlan(
                SampleRouters.router(Router.Relief.NONE),
                List.of(new RouterPlan.MaterialSheets(PLY, List.of(sheet(layer)))));
        var files = RouterFiles.of(plan, "Stand", Units.MM);
        assertThat(text(files.get(files.size() - 1)))
                .contains("made after the trim, by its own drawing parts/A-worktop-upper-layer.dxf");
    }

    private static RoutedSheet sheet(Part part) {
        return new RoutedSheet(
                SampleBoards.board(PLY, 800, 600),
                List.of(new RoutedPiece("A", part, new Lie(false, 0, new Vec2(50, 50)))));
    }

    private static String text(OutputFile file) throws IOException {
        var out = new ByteArrayOutputStream();
        file.content().writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
