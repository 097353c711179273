package org.standwright.viewer.paper;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Paper;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;
import javafx.stage.Window;
import org.standwright.drawing.Drawing;

/** The system's printers. Pages keep their true size where the paper is as large as they are. */
public final class Printer implements Printing {
    /** A page this much larger than the paper is printed at its true size all the same, share. */
    private static final double NEARLY = 0.02;

    @Override
    public void print(List<Drawing> pages, Window owner, Consumer<String> said) {
        Optional.ofNullable(PrinterJob.createPrinterJob())
                .ifPresentOrElse(
                        job -> ask(job, pages, owner, said),
                        () -> said.accept(
                                "There is no printer. Set one up in your system, or save the packet as a PDF."));
    }

    private static void ask(PrinterJob job, List<Drawing> pages, Window owner, Consumer<String> said) {
        job.getJobSettings().setJobName(pages.get(0).title());
        if (!job.showPrintDialog(owner)) {
            job.cancelJob();
            said.accept("Nothing was printed.");
            return;
        }
        said.accept("Printing …");
        var work = new Thread(() -> run(job, pages, said), "printing");
        work.setDaemon(true);
        work.start();
    }

    private static void run(PrinterJob job, List<Drawing> pages, Consumer<String> said) {
        for (int i = 0; i < pages.size(); i++) {
            var layout = layout(job, pages.get(i));
            if (!job.printPage(layout, placed(pages.get(i), layout))) {
                job.cancelJob();
                var failed = pages.get(i).title();
                Platform.runLater(() -> said.accept("'" + failed + "' could not be printed; look at the printer."));
                return;
            }
        }
        job.endJob();
        var words = pages.size() == 1 ? "One page was" : pages.size() + " pages were";
        Platform.runLater(() -> said.accept(words + " sent to the printer."));
    }

    private static PageLayout layout(PrinterJob job, Drawing page) {
        return job.getPrinter()
                .createPageLayout(
                        paper(page),
                        page.width() > page.height() ? PageOrientation.LANDSCAPE : PageOrientation.PORTRAIT,
                        javafx.print.Printer.MarginType.HARDWARE_MINIMUM);
    }

    private static Paper paper(Drawing page) {
        double longer = Math.max(page.width(), page.height());
        double letter = org.standwright.drawing.Paper.LETTER.height();
        return Math.abs(longer - letter) < 1 ? Paper.NA_LETTER : Paper.A4;
    }

    /** In the frame of what can be printed: margins that the printer keeps are taken off. */
    static Group placed(Drawing page, PageLayout layout) {
        double width = layout.getPrintableWidth() + layout.getLeftMargin() + layout.getRightMargin();
        double height = layout.getPrintableHeight() + layout.getTopMargin() + layout.getBottomMargin();
        var nodes = ShapeNodes.of(page);
        double fits = Math.min(width / ShapeNodes.points(page.width()), height / ShapeNodes.points(page.height()));
        if (fits < 1 - NEARLY) {
            nodes.getTransforms().add(new Scale(fits, fits));
        }
        nodes.getTransforms().add(0, new Translate(-layout.getLeftMargin(), -layout.getTopMargin()));
        return new Group(nodes);
    }
}
