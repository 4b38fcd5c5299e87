package plumbleaf.browser.build;

import java.util.Map;
import org.teavm.model.ClassReaderSource;
import org.teavm.parsing.substitution.SubstituteClassNameMapping;
import plumbleaf.browser.pattern.Matcher;
import plumbleaf.browser.pattern.Pattern;

/** In the module the classes of {@code plumbleaf.browser.pattern} bear the names of those of {@code java.util.regex}, whose own would be a twentieth of what is fetched. */
final class OwnPatterns implements SubstituteClassNameMapping {
    private static final Map<String, String> OWN = Map.of(
            "java.util.regex.Pattern", Pattern.class.getName(), "java.util.regex.Matcher", Matcher.class.getName());
    private static final Map<String, String> NAMES = Map.of(
            Pattern.class.getName(), "java.util.regex.Pattern", Matcher.class.getName(), "java.util.regex.Matcher");

    private final SubstituteClassNameMapping others;

    /** @param others what the compiler's class library puts in the place of the rest of the JDK */
    OwnPatterns(SubstituteClassNameMapping others) {
        this.others = others;
    }

    @Override
    public String originalToSubstitute(ClassReaderSource classes, String original) {
        String own = OWN.get(original);
        return own == null ? others.originalToSubstitute(classes, original) : own;
    }

    @Override
    public String substituteToOriginal(String substitute) {
        String name = NAMES.get(substitute);
        return name == null ? others.substituteToOriginal(substitute) : name;
    }
}
