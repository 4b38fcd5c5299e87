package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.MethodReference;
import org.teavm.model.Program;
import org.teavm.model.Variable;
import org.teavm.model.instructions.AssignInstruction;
import org.teavm.model.instructions.IntegerConstantInstruction;
import org.teavm.model.instructions.InvokeInstruction;
import org.teavm.model.instructions.StringConstantInstruction;
import plumbleaf.browser.pattern.Pattern;

/** Finds each pattern that a class of ours writes out, wherever it asks for one, and stops the build at the first that {@link Pattern} would refuse in the page. */
final class AskedPatterns implements ClassHolderTransformer {
    private static final Map<String, Set<String>> ASKS = Map.of(
            "java.util.regex.Pattern", Set.of("compile", "matches"),
            "java.lang.String", Set.of("matches", "replaceAll", "replaceFirst", "split"));

    /** @param flags as {@link Pattern#compile(String, int)} takes them; all of them where they are no constant, which it refuses */
    record Asked(String pattern, int flags) {}

    @Override
    public void transformClass(ClassHolder one, ClassHolderTransformerContext context) {
        if (!one.getName().startsWith("plumbleaf.")) return;
        for (Asked asked : of(one)) {
            try {
                Pattern.compile(asked.pattern(), asked.flags());
            } catch (IllegalArgumentException unknown) {
                throw new IllegalStateException(one.getName() + ": " + unknown.getMessage(), unknown);
            }
        }
    }

    /** Those that stand in it as texts, put together from constants as they may be; one that is made while it runs is refused there or not at all. */
    static List<Asked> of(ClassHolder one) {
        List<Asked> found = new ArrayList<>();
        for (MethodHolder method : one.getMethods()) {
            Program program = method.getProgram();
            if (program != null) look(program, found);
        }
        return found;
    }

    private static void look(Program program, List<Asked> found) {
        Map<Variable, Object> known = new HashMap<>();
        List<InvokeInstruction> asks = new ArrayList<>();
        Map<Variable, Variable> same = new HashMap<>();
        for (BasicBlock block : program.getBasicBlocks())
            for (Instruction each : block) {
                if (each instanceof StringConstantInstruction text) known.put(text.getReceiver(), text.getConstant());
                else if (each instanceof IntegerConstantInstruction number)
                    known.put(number.getReceiver(), number.getConstant());
                else if (each instanceof AssignInstruction assign) same.put(assign.getReceiver(), assign.getAssignee());
                else if (each instanceof InvokeInstruction invoke && asks(invoke.getMethod())) asks.add(invoke);
            }
        for (InvokeInstruction ask : asks) {
            List<? extends Variable> given = ask.getArguments();
            boolean flagged = ask.getMethod().getName().equals("compile") && given.size() == 2;
            Optional<Object> flags = flagged ? value(given.get(1), same, known) : Optional.of(0);
            Optional<Object> pattern = value(given.get(0), same, known);
            if (pattern.isPresent() && pattern.get() instanceof String text)
                found.add(new Asked(text, flags.isPresent() && flags.get() instanceof Integer is ? is : -1));
        }
    }

    private static boolean asks(MethodReference method) {
        return ASKS.getOrDefault(method.getClassName(), Set.of()).contains(method.getName());
    }

    private static Optional<Object> value(
            Variable variable, Map<Variable, Variable> same, Map<Variable, Object> known) {
        Variable from = variable;
        while (same.containsKey(from)) from = Objects.requireNonNull(same.get(from));
        return Optional.ofNullable(known.get(from));
    }
}
