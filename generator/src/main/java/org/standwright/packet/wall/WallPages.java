package org.standwright.packet.wall;

import java.util.List;
import org.standwright.packet.page.Flow;

/** Pages about walls, in two lots: what is made before the cut list, the work after it. */
public final class WallPages {
    /** One of them. */
    interface Page {
        void print(WallPaper paper, Flow flow);
    }

    private static final List<Page> DRAWINGS = List.of(
            new TitlePage(),
            new ElevationPages(),
            new StoryPage(),
            new CleatPage(),
            new HolderPage(),
            new HolderDrawingsPage(),
            new LeftOutPage());

    private static final List<Page> WORK = List.of(new StepsPage());

    private WallPages() {}

    /** What hangs where, at which heights, and how the cleats are made. */
    public static void drawings(WallPaper paper, Flow flow) {
        DRAWINGS.forEach(page -> page.print(paper, flow));
    }

    /** The order of work. */
    public static void work(WallPaper paper, Flow flow) {
        WORK.forEach(page -> page.print(paper, flow));
    }
}
