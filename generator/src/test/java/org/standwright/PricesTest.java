package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.standwright.file.DesignFiles;

/** Prices beside a preset's name reach the shopping list and the report, summed for each currency. */
class PricesTest {
    private static final String PLAIN = Presets.shipped().show("stand/planer-stand");
    private static final String PRICED = PLAIN.replace(
                    "\"birch-18\"", "{ \"preset\": \"birch-18\", \"price\": \"84.50 EUR\" }")
            .replace("\"birch-12\"", "{ \"preset\": \"birch-12\", \"price\": \"60 USD\" }")
            .replace("\"birch-6.5\"", "{ \"preset\": \"birch-6.5\", \"price\": \"31.00 EUR\" }");

    @Test
    void standOnTheShoppingListAndInTheReport() throws IOException {
        var report = new JsonMapper().readTree(file(PRICED, "report.json"));
        var list = file(PRICED, "cut-list.txt");

        int thick = boards(report, "Birch plywood 18 mm");
        int thin = boards(report, "Birch plywood 6.5 mm");
        int box = boards(report, "Birch plywood 12 mm");
        assertThat(report.at("/sheetPlan/prices/0").asText())
                .isEqualTo((84 * thick + thick / 2 + 31 * thin) + (thick % 2 == 0 ? ".00" : ".50") + " EUR");
        assertThat(report.at("/sheetPlan/prices/1").asText()).isEqualTo(60 * box + " USD");
        assertThat(list)
                .contains("84.50 EUR each", "31.00 EUR each", "60 USD each")
                .contains("Boards with a price together: "
                        + report.at("/sheetPlan/prices/0").asText());
    }

    @Test
    void areLeftOutWhenNoneIsGiven() throws IOException {
        assertThat(file(PLAIN, "cut-list.txt")).doesNotContain("EUR", "USD", "Boards with a price together");
        assertThat(new JsonMapper().readTree(file(PLAIN, "report.json")).at("/sheetPlan/prices"))
                .isEmpty();
    }

    private static int boards(JsonNode report, String material) {
        for (var plan : report.at("/sheetPlan/materials")) {
            if (plan.get("material").asText().equals(material)) {
                return plan.get("sheets").size();
            }
        }
        throw new AssertionError("no plan for " + material);
    }

    private static String file(String text, String name) {
        var design = DesignFiles.parse("priced.json", text, Presets.shipped()).design();
        return new String(Bytes.of(design).get(name), StandardCharsets.UTF_8);
    }
}
