package org.standwright.router.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.standwright.cutlist.CutLine;
import org.standwright.geom.Vec2;
import org.standwright.router.RoutedPiece;
import org.standwright.sheet.Cut.Direction;
import org.standwright.sheet.SheetUnit;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.PieceType;
import org.standwright.sheet.sawing.Block;

/**
 * What one type of a packing job is: a piece, or several that keep their places to each other. Sizes and places are units,
 * enlarged by the spacing.
 */
record Kit(int length, int width, List<Member> members) {
    /**
     * One piece of it.
     *
     * @param x of its lower left corner in the kit
     * @param quarters 0 or 2
     */
    record Member(Blank blank, int x, int y, int length, int width, int quarters) {
        private Member mirrored(int kitWidth) {
            return new Member(blank, x, kitWidth - y - width, length, width, quarters);
        }
    }

    Kit {
        members = List.copyOf(members);
    }

    /** The pieces of a block; when they are cut face down, they follow each other the other way round across it. */
    static Kit of(Block block, Map<String, Blank> blanks) {
        var members = new ArrayList<Member>();
        var lines =
                block.pieces().stream().map(line -> blanks.get(line.label())).toList();
        gather(block.inner(), 0, 0, lines, members);
        int width = block.inner().width();
        boolean faceDown = lines.get(0).isOverturned();
        return new Kit(
                block.inner().length(),
                width,
                faceDown
                        ? members.stream().map(member -> member.mirrored(width)).toList()
                        : members);
    }

    private static void gather(CutNode node, int x, int y, List<Blank> lines, List<Member> members) {
        if (node instanceof CutNode.Piece piece) {
            members.add(new Member(lines.get(piece.type()), x, y, piece.length(), piece.width(), 0));
        } else if (node instanceof CutNode.Split split) {
            boolean rip = split.direction() == Direction.RIP;
            int place = 0;
            for (var inner : split.nodes()) {
                gather(inner, rip ? x : x + place, rip ? y + place : y, lines, members);
                place += CutNode.extent(inner, split.direction());
            }
        }
    }

    PieceType type(int count, PieceType.Ways ways) {
        return new PieceType(length, width, count, ways, true);
    }

    /**
     * Its pieces on a board.
     *
     * @param x of its lower left corner from where pieces may begin
     * @param turned by a quarter to the left
     * @param edge what stays free along the board's edges, mm
     */
    List<RoutedPiece> at(int x, int y, boolean turned, double edge) {
        return members.stream()
                .map(member -> {
                    int along = turned ? width - member.y - member.width : member.x;
                    int across = turned ? member.x : member.y;
                    var corner = new Vec2(edge + SheetUnit.mm(x + along), edge + SheetUnit.mm(y + across));
                    return member.blank.at(corner, member.quarters + (turned ? 1 : 0));
                })
                .toList();
    }

    /** Labels of its pieces: 'A', or 'C + C + D'. */
    String label() {
        return members.stream().map(member -> member.blank.line().label()).collect(Collectors.joining(" + "));
    }

    /** Names of its parts. */
    String names() {
        return members.stream()
                .map(member -> member.blank.line())
                .map(CutLine::part)
                .map(part -> part.name())
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
