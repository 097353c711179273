package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Router;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Grain;
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
