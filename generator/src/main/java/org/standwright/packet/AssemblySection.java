package org.standwright.packet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.Stand;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** The order of work; common practice, no source. */
final class AssemblySection implements Section<Stand> {
    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        flow.freshPage();
        flow.heading("Assembly order");
        var steps = steps(contents);
        for (int i = 0; i < steps.size(); i++) {
            flow.item(Mark.step(i + 1), steps.get(i));
        }
    }

    private static List<String> steps(Contents<? extends Stand> contents) {
        boolean drawers = contents.furniture().bays().stream()
                .anyMatch(bay -> !bay.drawers().isEmpty());
        return Stream.of(
                        CarcassSteps.of(contents),
                        SupportSteps.of(contents),
                        TopSteps.of(contents, drawers),
                        FrontSteps.of(contents, drawers),
                        SteadySteps.of(contents),
                        List.of(height(contents) + " Tighten all bolts again after the first hours of use."))
                .flatMap(List::stream)
                .toList();
    }

    private static String height(Contents<? extends Stand> contents) {
        var stack = contents.furniture().stack();
        return stack.terms().stream().anyMatch(term -> term.isAdjustable())
                ? "Check the working height and set what can be set; it reaches from "
                        + contents.units().bareLength(stack.lowest()) + " to "
                        + contents.units().length(stack.highest()) + "."
                : "Check the working height.";
    }
}
