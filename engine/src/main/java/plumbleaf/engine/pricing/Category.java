package plumbleaf.engine.pricing;

import java.util.Optional;

/** What a line of cost is for; taxes go by it. */
public enum Category {
    MATERIAL("material", "Materials"),
    LABOUR("labor", "Labor"),
    EQUIPMENT("equipment", "Equipment"),
    SUBCONTRACT("subcontract", "Subcontract"),
    DISPOSAL("disposal", "Disposal"),
    PERMIT("permit", "Permit"),
    TRAVEL("travel", "Travel");

    private final String key;
    private final String words;

    Category(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** As people read it. */
    public String words() {
        return words;
    }

    public static Optional<Category> of(String key) {
        for (Category category : values()) {
            if (category.key.equals(key)) return Optional.of(category);
        }
        return Optional.empty();
    }
}
