package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;

/** The report's part of walls of cleats: what was decided, and what became of it. */
final class ReportWall {
    private ReportWall() {}

    static ObjectNode design(WallDesign design) {
        var node = JsonShapes.object();
        node.put("unit", design.unit().word());
        node.put("levelLine", design.levelLine());
        node.set("person", JsonShapes.plain(design.person()));
        node.set("walls", JsonShapes.list(design.walls(), JsonShapes::plain));
        var cleat = JsonShapes.object()
                .put("face", design.cleat().face())
                .put("tilt", design.cleat().tilt())
                .put("blunt", design.cleat().blunt())
                .put("board", design.cleat().board(design.saw().kerf()))
                .put("densestPitch", design.cleat().densestPitch());
        cleat.set("sheet", ReportCutting.sheet(design.cleat().sheet()));
        design.cleat().longest().ifPresent(longest -> cleat.put("longest", longest));
        node.set("cleat", cleat);
        node.set("rows", JsonShapes.plain(design.rows()));
        node.set("fixing", JsonShapes.plain(design.fixing()));
        var making = JsonShapes.object().put("fit", design.making().fit());
        making.set("sheet", ReportCutting.sheet(design.making().sheet()));
        making.set("thin", ReportCutting.sheet(design.making().thin()));
        making.set("screw", JsonShapes.plain(design.making().screw()));
        node.set("making", making);
        node.set("holders", JsonShapes.list(design.holders(), JsonShapes::plain));
        node.set("saw", ReportCutting.saw(design.saw()));
        design.router().ifPresent(router -> node.set("router", ReportRouter.router(router)));
        node.set("stock", ReportCutting.stock(design.stock()));
        node.set("cutting", JsonShapes.plain(design.cutting()));
        node.set("rules", JsonShapes.list(design.rules(), JsonShapes::plain));
        return node;
    }

    static ObjectNode face(CleatedWall face) {
        var node = JsonShapes.object()
                .put("name", face.wall().name())
                .put("area", face.outline().area())
                .put("bare", face.bare().size());
        node.set("origin", JsonShapes.point(face.frame().origin()));
        node.put("right", face.frame().right().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        node.set("studs", JsonShapes.list(face.studs(), JsonShapes::plain));
        node.set("rows", JsonShapes.list(face.rows(), ReportWall::row));
        node.set(
                "leftOut",
                JsonShapes.list(
                        face.shortRuns(),
                        run -> JsonShapes.object()
                                .put("row", run.row())
                                .put("from", run.along().from())
                                .put("to", run.along().to())
                                .put("why", run.why())));
        node.set("notes", JsonShapes.words(face.notes()));
        return node;
    }

    private static ObjectNode row(Row row) {
        var node = JsonShapes.object().put("number", row.number()).put("height", row.height());
        node.set("strips", JsonShapes.list(row.strips(), ReportWall::strip));
        return node;
    }

    private static ObjectNode strip(Strip strip) {
        var node = JsonShapes.object()
                .put("label", strip.label())
                .put("from", strip.along().from())
                .put("to", strip.along().to());
        node.set("studs", JsonShapes.JSON.valueToTree(strip.studs()));
        node.set("screws", JsonShapes.JSON.valueToTree(strip.screws()));
        return node;
    }

    static ObjectNode holder(CleatWall wall, HungHolder holder) {
        var node = JsonShapes.object()
                .put("name", holder.name())
                .put("wall", wall.wall(holder.wall()).wall().name())
                .put("row", holder.row())
                .put("x", holder.x())
                .put("byHand", holder.byHand())
                .put("backedBy", JsonShapes.word(holder.backing().by()))
                .put("backedBelow", holder.backing().below());
        node.set("box", JsonShapes.box(holder.made().box()));
        return node;
    }
}
