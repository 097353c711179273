package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonMetaSchema;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.NonValidationKeyword;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.standwright.file.text.JsonTextReader;
import org.standwright.file.text.SourceText;

/** The published schema of design files and presets (JSON Schema, draft 2020-12). */
final class DesignSchema {
    /** What our schema adds to the standard's keywords; validators that do not know them pass them by. */
    static final List<String> OWN_KEYWORDS = List.of(
            "x-measure", "x-preset", "x-bare", "x-min-mm", "x-max-mm", "x-min-kg", "x-max-kg", "x-min-N", "x-max-N");

    private static final String RESOURCE = "standwright.schema.json";
    private static final DesignSchema PUBLISHED = load();

    private final String text;
    private final JsonNode tree;
    private final JsonSchema validator;

    private DesignSchema(String text, JsonNode tree) {
        this.text = text;
        this.tree = tree;
        this.validator = validator(tree);
    }

    static DesignSchema published() {
        return PUBLISHED;
    }

    String text() {
        return text;
    }

    /** The place where the schema describes a whole file. */
    SchemaPlace root() {
        return new SchemaPlace(tree, tree);
    }

    /** What the validator has to say about a file's tree. */
    Set<ValidationMessage> check(JsonNode file) {
        return validator.validate(file);
    }

    private static DesignSchema load() {
        try (var in = DesignSchema.class.getResourceAsStream(RESOURCE)) {
            var source = SourceText.read(RESOURCE, in);
            return new DesignSchema(source.text(), JsonTextReader.read(source).root());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonSchema validator(JsonNode tree) {
        var standard = JsonMetaSchema.getV202012();
        var ours = JsonMetaSchema.builder(standard)
                .keywords(OWN_KEYWORDS.stream().map(NonValidationKeyword::new).toList())
                .build();
        var config = SchemaValidatorsConfig.builder()
                .pathType(PathType.JSON_POINTER)
                .locale(Locale.ROOT)
                .build();
        return JsonSchemaFactory.getInstance(VersionFlag.V202012, factory -> factory.metaSchema(ours))
                .getSchema(tree, config);
    }
}
