package org.standwright.router;

import java.util.List;
import org.standwright.design.kit.Router;
import org.standwright.part.Part;

final class ExpectedPlot {
    private ExpectedPlot() {}

    static List<String> template(Part part) {
        return List.of();
    }

    static List<String> top(RoutedSheet sheet, Router router) {
        return List.of();
    }

    static List<String> bottom(RoutedSheet sheet, Router router) {
        return List.of();
    }
}
