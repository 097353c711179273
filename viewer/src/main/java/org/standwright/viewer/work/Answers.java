package org.standwright.viewer.work;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.file.text.FileProblem;
import org.standwright.make.Built;
import org.standwright.make.Product;

/** Who hears what was worked out, on the screen's thread and in this order. */
interface Answers {
    /** There is no design in the text, or none that can be built: the last good one stays. */
    void refused(List<FileProblem> problems);

    void shown(Built built);

    void listed(CutList cutList);

    /** @param withCures whether cures were looked for already */
    void judged(List<Finding> findings, boolean withCures);

    /** @param isFinal whether it is the plan that files get */
    void planned(Job job, boolean isFinal);

    /** The boards can be shown, but not sawn. */
    void unplanned(FileProblem problem);

    /** All that files are made from. */
    void finished(Product product);
}
