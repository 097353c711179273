package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.standwright.design.StandDesign;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Deed;

/** What comes of an action on what is picked. */
record FrontDeeds(String text, StandDesign design, Bays bays) {
    Deed of(FrontAction action, Located picked) {
        return action.isOfBay() ? ofBay(action, picked) : ofCell(action, picked);
    }

    private Deed ofBay(FrontAction action, Located picked) {
        var deeds = new BayDeeds(text, design, picked.bays(), picked.bay());
        return switch (action) {
            case ADD_BAY -> deeds.add();
            case REMOVE_BAY -> deeds.remove();
            case BAY_LEFT -> deeds.swapped(-1);
            case BAY_RIGHT -> deeds.swapped(1);
            case SPLIT_BAY -> deeds.split();
            default -> throw new IllegalArgumentException(action + " is done to no bay.");
        };
    }

    private Deed ofCell(FrontAction action, Located picked) {
        var bay = picked.here();
        if (picked.cell().isEmpty() && action != FrontAction.ADD_DRAWER) {
            return Deed.impossible(
                    action.words() + ": " + bay.name(), "A whole bay is picked. Pick a front or an opening in it.");
        }
        int at = picked.cell().orElse(bay.fronts().size() - 1);
        var cell = bay.column().cells().get(at);
        var deeds = new CellDeeds(text, design, bay, at);
        var fresh = new NewCells(design);
        return switch (action) {
            case ADD_DRAWER -> deeds.addDrawer();
            case REMOVE -> deeds.remove();
            case SPLIT -> deeds.split();
            case JOIN -> deeds.join();
            case UP -> deeds.moved(-1);
            case DOWN -> deeds.moved(1);
            case DRAWERS -> cell.isDrawer() ? already("a drawer", bay, at) : deeds.made("drawers", fresh.drawers(cell));
            case DOOR ->
                is("door", cell)
                        ? already("a door", bay, at)
                        : deeds.made("a door", fresh.door(cell, bay.layout().opening(), all(), hinge()));
            case OPEN -> is("open", cell) ? already("open", bay, at) : deeds.made("an open shelf", fresh.open(cell));
            default -> throw new IllegalArgumentException(action + " is done to no front.");
        };
    }

    private static boolean is(String kind, Cell cell) {
        return cell.source().path("kind").asText().equals(kind);
    }

    private static Deed already(String what, Bays.One bay, int at) {
        return Deed.impossible(
                "Change " + bay.fronts().get(at).name(), bay.fronts().get(at).name() + " is " + what + " already.");
    }

    private Optional<JsonNode> hinge() {
        return Optional.ofNullable(bays.written().findValue("hinge"));
    }

    private Rect all() {
        var across = bays.across();
        var first = across.get(0).layout().opening();
        return new Rect(
                first.x0(),
                first.y0(),
                across.get(across.size() - 1).layout().opening().x1(),
                first.y1());
    }
}
