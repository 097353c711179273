package org.standwright.make;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.drawing.Drawing;
import org.standwright.packet.Packet;

/** The packet of each kind of furniture. */
record Pages(Product product) implements FurnitureVisitor<List<Drawing>> {
    @Override
    public List<Drawing> stand(Stand stand) {
        return Packet.pages(
                stand,
                product.cutList(),
                product.plan(),
                product.findings(),
                product.savings(),
                stand.accept(new Masses(product.solids())));
    }

    @Override
    public List<Drawing> wall(CleatWall wall) {
        return Packet.pages(
                wall,
                product.cutList(),
                product.plan(),
                product.findings(),
                wall.accept(new Masses(product.solids())),
                Limits.of(wall, product.solids()));
    }
}
