package org.standwright.check.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.CasterFloor;
import org.standwright.check.balance.FootLoad;
import org.standwright.check.balance.LevelRange;
import org.standwright.check.balance.MachineCentre;
import org.standwright.check.balance.RollingStand;
import org.standwright.check.balance.TestClothingLoad;
import org.standwright.check.balance.TestOpenParts;
import org.standwright.check.balance.TestTopLoad;
import org.standwright.check.balance.TipClosed;
import org.standwright.check.balance.TipFeed;
import org.standwright.check.balance.TipLargest;
import org.standwright.check.balance.TipLean;
import org.standwright.check.balance.TipOpen;
import org.standwright.check.balance.TipPush;
import org.standwright.check.balance.TipSlope;
import org.standwright.check.balance.TipThreshold;
import org.standwright.check.bending.BottomGroove;
import org.standwright.check.bending.BottomSag;
import org.standwright.check.bending.DrawerBottomSag;
import org.standwright.check.bending.PlateOpeningSag;
import org.standwright.check.bending.Racking;
import org.standwright.check.bending.ShelfSag;
import org.standwright.check.bending.SideBearing;
import org.standwright.check.bending.SideBuckling;
import org.standwright.check.bending.TopSag;
import org.standwright.check.bending.WideDrawer;
import org.standwright.check.fastener.EdgeDistance;
import org.standwright.check.fastener.EdgeScrews;
import org.standwright.check.fastener.HingePull;
import org.standwright.check.fastener.RunnerScrews;
import org.standwright.check.fastener.SlideLoad;
import org.standwright.check.fastener.SlideScrews;
import org.standwright.check.fastener.WorktopScrews;
import org.standwright.check.handling.Doorway;
import org.standwright.check.handling.ElbowHeight;
import org.standwright.check.handling.MachineLifting;
import org.standwright.check.handling.NeighbourLevel;
import org.standwright.check.handling.PartLifting;
import org.standwright.check.handling.SheetLifting;
import org.standwright.check.handling.Stairs;
import org.standwright.check.handling.StandLifting;
import org.standwright.check.machine.CordHole;
import org.standwright.check.machine.DrawerInTheWay;
import org.standwright.check.machine.HoseBend;
import org.standwright.check.machine.HoseHole;
import org.standwright.check.machine.MachineAnchor;
import org.standwright.check.machine.MachineOnWorktop;
import org.standwright.check.machine.RouterAir;
import org.standwright.check.machine.RouterSwitch;
import org.standwright.check.machine.SidesInReach;
import org.standwright.check.making.BoardThickness;
import org.standwright.check.making.EdgePly;
import org.standwright.check.making.HardwareThickness;
import org.standwright.check.making.HingeSlide;
import org.standwright.check.making.LargeParts;
import org.standwright.check.making.MeetingScrews;
import org.standwright.check.making.ScrewsThrough;
import org.standwright.check.making.SheetThickness;
import org.standwright.check.making.SlideRoom;
import org.standwright.check.making.SmallParts;
import org.standwright.check.making.ThinWeb;
import org.standwright.check.wall.CleatCables;
import org.standwright.check.wall.CleatCombined;
import org.standwright.check.wall.CleatFraming;
import org.standwright.check.wall.CleatLateral;
import org.standwright.check.wall.CleatOverhang;
import org.standwright.check.wall.CleatPullThrough;
import org.standwright.check.wall.CleatWithdrawal;
import org.standwright.check.wall.HangFlammable;
import org.standwright.check.wall.HangKnock;
import org.standwright.check.wall.HangLip;
import org.standwright.check.wall.HangReach;
import org.standwright.check.wall.HangRideOut;
import org.standwright.check.wall.HangSupport;
import org.standwright.check.wall.HangerScrews;
import org.standwright.check.wall.HolderShelfSag;
import org.standwright.check.wall.HungWall;
import org.standwright.check.wall.WallCoverage;
import org.standwright.check.wall.WallLeftOut;
import org.standwright.check.wall.WallLifting;
import org.standwright.check.wall.WallPanelSpace;
import org.standwright.design.RuleChoice;

/** All rules, kind of furniture by kind, asked in order, with what the design decides about them. */
public final class Checks {
    /** Those of a stand, in the order in which a maker reads them. */
    public static final List<Rule<LoadedStand>> STAND = List.of(
            new FootLoad(),
            new TipClosed(),
            new TipOpen(),
            new TipLargest(),
            new TipLean(),
            new TipPush(),
            new TipFeed(),
            new TipSlope(),
            new TipThreshold(),
            new TestTopLoad(),
            new TestOpenParts(),
            new TestClothingLoad(),
            new MachineCentre(),
            new RollingStand(),
            new CasterFloor(),
            new LevelRange(),
            new TopSag(),
            new PlateOpeningSag(),
            new ShelfSag(),
            new BottomSag(),
            new DrawerBottomSag(),
            new BottomGroove(),
            new SideBearing(),
            new SideBuckling(),
            new Racking(),
            new WideDrawer(),
            new SlideLoad(),
            new SlideScrews(),
            new RunnerScrews(),
            new HingePull(),
            new WorktopScrews(),
            new EdgeScrews(),
            new EdgeDistance(),
            new SheetThickness(),
            new BoardThickness(),
            new ThinWeb(),
            new MeetingScrews(),
            new ScrewsThrough(),
            new EdgePly(),
            new HingeSlide(),
            new HardwareThickness(),
            new SlideRoom(),
            new SmallParts(),
            new LargeParts(),
            new MachineOnWorktop(),
            new MachineAnchor(),
            new DrawerInTheWay(),
            new SidesInReach(),
            new HoseBend(),
            new HoseHole(),
            new CordHole(),
            new RouterAir(),
            new RouterSwitch(),
            new MachineLifting(),
            new StandLifting(),
            new PartLifting(),
            new SheetLifting(),
            new Doorway(),
            new Stairs(),
            new NeighbourLevel(),
            new ElbowHeight());

    /** Those of walls of cleats, in the order in which a maker reads them. */
    public static final List<Rule<HungWall>> WALL = List.of(
            new CleatWithdrawal(),
            new CleatLateral(),
            new CleatCombined(),
            new CleatPullThrough(),
            new HangerScrews(),
            new CleatOverhang(),
            new CleatFraming(),
            new HangRideOut(),
            new HangLip(),
            new HangKnock(),
            new HangSupport(),
            new HolderShelfSag(),
            new CleatCables(),
            new WallPanelSpace(),
            new HangFlammable(),
            new HangReach(),
            new WallLifting(),
            new WallLeftOut(),
            new WallCoverage());

    private Checks() {}

    /** What the rules of all kinds are about, each name once: those of a stand first. */
    public static List<RuleText> texts() {
        var texts = new LinkedHashMap<String, RuleText>();
        Stream.of(STAND, WALL)
                .flatMap(List::stream)
                .map(Rule::text)
                .forEach(text -> texts.putIfAbsent(text.name(), text));
        return List.copyOf(texts.values());
    }

    /** What the rule of a name is about, whatever kind of furniture it looks at. */
    public static Optional<RuleText> named(String name) {
        return texts().stream().filter(text -> text.name().equals(name)).findFirst();
    }

    /** What all rules find in a stand, the heaviest first and within a weight in the order of the rules. */
    public static List<Finding> of(LoadedStand stand) {
        return of(STAND, stand, stand.design().rules());
    }

    /** What one rule finds in a stand, as strict as the design wants it. */
    public static List<Finding> of(Rule<LoadedStand> rule, LoadedStand stand) {
        return of(rule, stand, stand.design().rules());
    }

    /** What all rules find in walls of cleats, in the same order. */
    public static List<Finding> of(HungWall wall) {
        return of(WALL, wall, wall.design().rules());
    }

    /**
     * What some rules find, the heaviest first and within a weight in the order of the rules.
     *
     * @param decided what the subject's design decides about its rules
     */
    public static <S> List<Finding> of(List<Rule<S>> rules, S subject, List<RuleChoice> decided) {
        var findings = new ArrayList<Finding>();
        rules.forEach(rule -> findings.addAll(of(rule, subject, decided)));
        findings.addAll(new Choices(decided).idle(findings));
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
    }

    /** What one rule finds, as strict as its subject's design wants it. */
    public static <S> List<Finding> of(Rule<S> rule, S subject, List<RuleChoice> decided) {
        var choices = new Choices(decided);
        return rule.check(subject).stream().map(choices::applied).toList();
    }
}
