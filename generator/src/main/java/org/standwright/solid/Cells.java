package org.standwright.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.standwright.solid.mesh.ClosedMesh;
import org.standwright.solid.mesh.Facet;
import org.standwright.solid.mesh.Planes;
import org.standwright.solid.mesh.Planes.Plane;
import org.standwright.solid.mesh.Shell;

/**
 * Tools that the layers can't take, cut by the kernel, each in a small cell of the board: what a tool changes in the
 * surface is the surface of the cell without it less the surface of the cell with it. The cell's own walls are left out:
 * they are the same in both, or meet those of the next cell, into which the tool goes on.
 */
final class Cells {
    /** How far a cell reaches beyond its tools, 1 mm. */
    private static final int MARGIN = Solid.PER_MM;

    /** More tools than these are worth another wall through their cell. */
    private static final int FEW = 4;

    private final Workpiece workpiece;
    private final Planes planes;

    Cells(Workpiece workpiece, Planes planes) {
        this.workpiece = workpiece;
        this.planes = planes;
    }

    /** Adds to {@code shell} what {@code tools} change in a board that {@code upright} have been taken from. */
    void add(List<Tool> tools, List<Prism> upright, Shell shell) {
        for (var cluster : Clusters.of(tools)) {
            var changes = new ArrayList<Facet>();
            change(cell(Extent.around(cluster)), cluster, upright, changes);
            if (!changes.isEmpty()) {
                ClosedMesh.patch(changes, shell);
            }
        }
    }

    private Extent cell(Extent tools) {
        var board = workpiece.board();
        return new Extent(
                Math.max(board.x0(), tools.x0() - MARGIN),
                Math.max(board.y0(), tools.y0() - MARGIN),
                Math.max(board.z0(), tools.z0() - MARGIN),
                Math.min(board.x1(), tools.x1() + MARGIN),
                Math.min(board.y1(), tools.y1() + MARGIN),
                Math.min(board.z1(), tools.z1() + MARGIN));
    }

    /** Cuts a cell, or its two halves if it has many tools: a tool in one half costs the other nothing. */
    private void change(Extent cell, List<Tool> tools, List<Prism> upright, List<Facet> changes) {
        var inside = touching(tools, List.of(cell));
        var before = touching(
                touching(upright, List.of(cell)),
                inside.stream().map(Tool::extent).toList());
        var halves = cell.halved();
        if (inside.size() + before.size() <= FEW || halves.isEmpty()) {
            cut(cell, inside, before, changes);
        } else {
            halves.forEach(half -> change(half, inside, upright, changes));
        }
    }

    private static <T extends Tool> List<T> touching(List<T> tools, List<Extent> any) {
        return tools.stream()
                .filter(tool -> any.stream().anyMatch(tool.extent()::touches))
                .toList();
    }

    private void cut(Extent cell, List<Tool> tools, List<Prism> before, List<Facet> changes) {
        if (tools.isEmpty()) {
            return;
        }
        var carving = new Carving(planes);
        var walls = walls(cell);
        var rest = carving.rest(workpiece, cell, Groups.of(List.copyOf(before)));
        carving.facets(rest).stream()
                .filter(facet -> !walls.contains(facet.plane()))
                .map(Facet::turned)
                .forEach(changes::add);
        carving.facets(carving.without(rest, Groups.of(tools))).stream()
                .filter(facet -> !walls.contains(facet.plane()))
                .forEach(changes::add);
    }

    /** The planes of a cell's walls inside the board. */
    private List<Integer> walls(Extent cell) {
        var walls = new ArrayList<Integer>();
        var board = workpiece.board();
        if (cell.x0() > board.x0()) {
            walls.add(number(Direction.ALONG_X, cell.x0(), -1));
        }
        if (cell.x1() < board.x1()) {
            walls.add(number(Direction.ALONG_X, cell.x1(), 1));
        }
        if (cell.y0() > board.y0()) {
            walls.add(number(Direction.ALONG_Y, cell.y0(), -1));
        }
        if (cell.y1() < board.y1()) {
            walls.add(number(Direction.ALONG_Y, cell.y1(), 1));
        }
        if (cell.z0() > board.z0()) {
            walls.add(number(Direction.UP, cell.z0(), -1));
        }
        if (cell.z1() < board.z1()) {
            walls.add(number(Direction.UP, cell.z1(), 1));
        }
        return Collections.unmodifiableList(walls);
    }

    private int number(Direction direction, int w, int side) {
        return planes.number(direction.inSpace(Plane.level(w, side)));
    }
}
