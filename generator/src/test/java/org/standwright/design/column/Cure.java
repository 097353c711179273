package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;

/** Does what the message of a refusal says, as a maker would copy it into the design file. */
public final class Cure {
    private static final String LENGTH = "([0-9][0-9./ ]* (?:mm|in))";

    private Cure() {}

    /** The design after the first way out, where that names a value. */
    public static Optional<StandDesign> of(StandDesign design, ImpossibleDesignException refused) {
        var text = refused.getMessage();
        var field = refused.field();
        var height = find("The nearest possible working height is " + LENGTH, text);
        if (height.isPresent()) {
            return height.map(to ->
                    Draft.of(design, draft -> draft.workingHeight = new WorkingHeight.Given(mm(to.group(1)))));
        }
        var wide = find("Make it " + LENGTH + " wide(?: and the plan " + LENGTH + " wide)?", text);
        if (wide.isPresent() || text.contains("Leave its width out")) {
            var to = wide.map(found -> mm(found.group(1)))
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty());
            var changed = atBay(design, field, bay -> new Bay(to, bay.contents()));
            return Optional.of(wide.filter(found -> found.group(2) != null)
                    .map(found -> planWidth(changed, mm(found.group(2))))
                    .orElse(changed));
        }
        var plan = find("Make the plan " + LENGTH + " wide", text);
        if (plan.isPresent()) {
            return plan.map(to -> planWidth(design, mm(to.group(1))));
        }
        var allowed = find("Allow (?:them|those fronts) " + LENGTH, text);
        var high = find("Make (?:it|the lowest (?:front|door|opening)) " + LENGTH + " high", text);
        return high.or(() -> allowed).map(to -> atBay(design, field, bay -> changed(bay, field, mm(to.group(1)))));
    }

    private interface Change {
        Bay of(Bay bay);
    }

    private static Optional<Matcher> find(String pattern, String text) {
        var matcher = Pattern.compile(pattern).matcher(text);
        return matcher.find() ? Optional.of(matcher) : Optional.empty();
    }

    private static StandDesign planWidth(StandDesign design, double width) {
        return Draft.of(design, draft -> draft.plan(width, design.plan().depth().orElseThrow()));
    }

    private static double mm(String length) {
        var words = length.split(" ");
        double sum = 0;
        for (int i = 0; i < words.length - 1; i++) {
            var parts = words[i].split("/");
            sum += Double.parseDouble(parts[0]) / (parts.length > 1 ? Double.parseDouble(parts[1]) : 1);
        }
        return words[words.length - 1].equals("in") ? sum * 25.4 : sum;
    }

    private static StandDesign atBay(StandDesign design, String pointer, Change change) {
        return Draft.of(
                design,
                draft -> draft.bays = bays(design.bays(), pointer.substring(1).split("/"), 1, change));
    }

    /** {@code path[at]} is the index of a bay; the deepest bay on the path is changed. */
    private static List<Bay> bays(List<Bay> bays, String[] path, int at, Change change) {
        int index = Integer.parseInt(path[at]);
        var bay = bays.get(index);
        var all = new ArrayList<>(bays);
        if (at + 3 < path.length && path[at + 3].equals("bays")) {
            int content = Integer.parseInt(path[at + 2]);
            var divided = (Content.Divided) bay.contents().get(content);
            var contents = new ArrayList<>(bay.contents());
            contents.set(content, new Content.Divided(divided.height(), bays(divided.bays(), path, at + 4, change)));
            all.set(index, new Bay(bay.width(), contents));
        } else {
            all.set(index, change.of(bay));
        }
        return all;
    }

    private static Bay changed(Bay bay, String field, double height) {
        var path = field.split("/");
        boolean last = path[path.length - 1].equals("contents");
        int index = last ? bay.contents().size() - 1 : Integer.parseInt(path[path.length - 2]);
        var contents = new ArrayList<>(bay.contents());
        contents.set(index, changed(contents.get(index), OptionalDouble.of(height)));
        return new Bay(bay.width(), contents);
    }

    private static Content changed(Content content, OptionalDouble height) {
        if (content instanceof Content.GivenDrawers given) {
            var fronts = new ArrayList<>(given.fronts());
            fronts.set(fronts.size() - 1, height.getAsDouble());
            return new Content.GivenDrawers(fronts);
        } else if (content instanceof Content.Open open) {
            return new Content.Open(height, open.shelves());
        } else if (content instanceof Content.Clear clear) {
            return new Content.Clear(height, clear.use(), clear.hose());
        } else if (content instanceof Content.Door door) {
            return new Content.Door(height, door.hinge(), door.hung(), door.shelves());
        } else if (content instanceof Content.Divided divided) {
            return new Content.Divided(height, divided.bays());
        } else if (content instanceof Content.EqualDrawers equal) {
            return new Content.EqualDrawers(equal.count(), equal.least(), height);
        } else if (content instanceof Content.GraduatedDrawers graduated) {
            return new Content.GraduatedDrawers(graduated.count(), graduated.ratio(), graduated.least(), height);
        }
        return content;
    }
}
