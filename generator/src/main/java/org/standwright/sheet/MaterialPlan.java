package org.standwright.sheet;

import java.util.List;
import java.util.Optional;
import org.standwright.design.kit.Saw;
import org.standwright.part.Material;
import org.standwright.unit.Money;

/**
 * All boards of one material.
 *
 * @param proof how near it is to the least that any plan needs
 */
public record MaterialPlan(Material material, List<PlannedSheet> sheets, Proof proof) {
    public MaterialPlan {
        sheets = List.copyOf(sheets);
    }

    /** Boards that have to be bought. */
    public int bought() {
        return Math.toIntExact(
                sheets.stream().filter(sheet -> sheet.from().isBought()).count());
    }

    /** Price of all boards to buy; empty when one of them has none or they are of several currencies. */
    public Optional<Money> price() {
        var prices = sheets.stream()
                .filter(sheet -> sheet.from().isBought())
                .map(sheet -> sheet.from().price())
                .toList();
        boolean known = !prices.isEmpty()
                && prices.stream().allMatch(Optional::isPresent)
                && prices.stream()
                                .map(price -> price.orElseThrow().currency())
                                .distinct()
                                .count()
                        == 1;
        return known ? prices.stream().map(Optional::orElseThrow).reduce(Money::plus) : Optional.empty();
    }

    /** Area of the pieces, those in blanks included, units². */
    public long pieceArea() {
        return sheets.stream()
                .flatMap(planned -> planned.pieces().stream())
                .mapToLong(PlacedPiece::partArea)
                .sum();
    }

    /** What becomes of the boards' area. */
    public Yield areas() {
        return sheets.stream().map(Yield::of).reduce(Yield.NONE, Yield::plus);
    }

    /** All cuts in the order in which they are made, those of one setting together. */
    public List<SetUp> setUps() {
        return SetUp.of(sheets);
    }

    /** Cuts whose panel is shorter along the fence than is safe, in their order. */
    public List<ShortCut> shortCuts(Saw saw) {
        return ShortCut.of(sheets, SheetUnit.up(saw.smallestPiece()));
    }

    /** Area of the boards as bought or at hand, units². */
    public long sheetArea() {
        return sheets.stream().mapToLong(planned -> planned.board().size()).sum();
    }

    /** Area of pieces over area of boards, 0 to 1. */
    public double yield() {
        return (double) pieceArea() / sheetArea();
    }
}
