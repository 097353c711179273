package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.Area.same;

import java.util.ArrayList;
import java.util.List;

/** The height stack of a report, worked out again. */
final class ReportedStack {
    private final Report report;

    ReportedStack(Report report) {
        this.report = report;
    }

    /** One layer from the floor up, and how far it can be set, mm. */
    private record Layer(double height, double less, double more) {
        static Layer fixed(double height) {
            return new Layer(height, 0, 0);
        }

        static Layer range(Entry range) {
            double usual = range.number("/usual");
            return new Layer(usual, usual - range.number("/least"), range.number("/most") - usual);
        }
    }

    void check() {
        double height = workingHeight();
        same(report.number("/stack/workingHeight"), height, "working height");
        same(report.number("/built/workingHeight"), height, "working height as built");
        var below = below();
        var above = above();
        double carcass = height - sum(below) - sum(above);
        same(report.number("/carcass/min/2"), sum(below), "underside of the carcass");
        same(report.number("/carcass/max/2"), sum(below) + carcass, "top of the carcass");

        var layers = new ArrayList<>(below);
        layers.add(Layer.fixed(carcass));
        layers.addAll(above);
        terms(layers);
        double less = layers.stream().mapToDouble(Layer::less).sum();
        double more = layers.stream().mapToDouble(Layer::more).sum();
        same(report.number("/stack/lowest"), height - less, "lowest");
        same(report.number("/stack/highest"), height + more, "highest");
        if (report.entry().text("/design/workingHeight/kind").equals("beside")) {
            assertThat(less + more)
                    .as("what levels it on the floor")
                    .isGreaterThanOrEqualTo(report.number("/design/workingHeight/fall") + 5 - 1e-6);
        }
    }

    private void terms(List<Layer> layers) {
        var terms = report.list("/stack/terms");
        assertThat(terms).hasSameSizeAs(layers);
        for (int i = 0; i < layers.size(); i++) {
            var name = terms.get(i).text("/name");
            same(terms.get(i).number("/height"), layers.get(i).height(), name);
            same(terms.get(i).number("/less"), layers.get(i).less(), name + " lower");
            same(terms.get(i).number("/more"), layers.get(i).more(), name + " higher");
        }
    }

    /** From the elbow: the middle of the range for the work (CCOHS and AUVA, as quoted), on a mark of the tape. */
    private double workingHeight() {
        var height = report.entry().at("/design/workingHeight");
        return switch (height.kind()) {
            case "elbow" -> {
                double surface = height.number("/elbow") + height.number("/shoes") + againstElbow(height.text("/work"));
                same(height.number("/height"), surface, "height from the elbow as written");
                yield Math.floor(surface / report.tape() + 0.5) * report.tape();
            }
            case "beside" -> height.number("/surfaceHeight") - height.number("/below");
            default -> height.number("/height");
        };
    }

    private static double againstElbow(String work) {
        return switch (work) {
            case "precise" -> (50 + 100) / 2.0;
            case "light" -> -(50 + 100) / 2.0;
            default -> -(200 + 400) / 2.0;
        };
    }

    private List<Layer> below() {
        var support = report.entry().at("/design/support");
        var blocks = Layer.fixed(2 * report.panel());
        return switch (support.kind()) {
            case "casters" -> List.of(Layer.fixed(support.number("/caster/height")), blocks);
            case "levelers" -> List.of(Layer.range(support.at("/leveler/height")), blocks);
            case "plinth" -> List.of(Layer.fixed(support.number("/pads")), Layer.fixed(support.number("/height")));
            default -> List.of(Layer.fixed(support.number("/pads")));
        };
    }

    /** Worktop, shims, feet, and the surface that has to come to the working height. */
    private List<Layer> above() {
        var layers = new ArrayList<Layer>();
        for (int i = 0; i < report.number("/design/worktopLayers"); i++) {
            layers.add(Layer.fixed(report.thickness("worktop")));
        }
        if (report.entry().has("/design/place/shims")) {
            layers.add(Layer.range(report.entry().at("/design/place/shims")));
        }
        if (report.hasMachineOnTop()) {
            layers.add(Layer.fixed(report.number("/design/machine/feet")));
        }
        var reference = report.entry().at("/design/machine/reference");
        double usual = reference.number("/height");
        layers.add(new Layer(
                usual, usual - reference.number("/lowest", usual), reference.number("/highest", usual) - usual));
        return layers;
    }

    private static double sum(List<Layer> layers) {
        return layers.stream().mapToDouble(Layer::height).sum();
    }
}
