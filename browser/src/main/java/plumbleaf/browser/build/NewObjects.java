package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.teavm.backend.wasm.WasmFunctionTypes;
import org.teavm.backend.wasm.model.WasmField;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmGlobal;
import org.teavm.backend.wasm.model.WasmLocal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.model.WasmStructure;
import org.teavm.backend.wasm.model.WasmType;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmFloat64Constant;
import org.teavm.backend.wasm.model.instruction.WasmGetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInstructionList;
import org.teavm.backend.wasm.model.instruction.WasmInt32Constant;
import org.teavm.backend.wasm.model.instruction.WasmInt64Constant;
import org.teavm.backend.wasm.model.instruction.WasmNullConstant;
import org.teavm.backend.wasm.model.instruction.WasmSetLocal;
import org.teavm.backend.wasm.model.instruction.WasmStructNew;
import org.teavm.backend.wasm.model.instruction.WasmStructNewDefault;
import org.teavm.backend.wasm.model.instruction.WasmStructSet;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;

/**
 * The compiler makes an object empty, gives it its class, then its fields, one after the other; there are some fifteen thousand such places. Where nothing looks at the
 * object before its last field is set it is made whole, by one instruction; where a constructor fills it, one function makes it and calls that, whoever asks.
 */
final class NewObjects {
    /** What every object has before its own fields: its class and its lock. */
    private static final int HEAD = 2;

    private final WasmModule module;
    private final WasmFunctionTypes types;
    private final Map<WasmFunction, WasmFunction> makers = new HashMap<>();
    private final Map<WasmFunction, Integer> calls = new HashMap<>();
    private final Map<WasmStructure, WasmFunction> empties = new HashMap<>();

    private NewObjects(WasmModule module, WasmFunctionTypes types) {
        this.module = module;
        this.types = types;
    }

    static void tidy(WasmModule module, WasmFunctionTypes types) {
        NewObjects objects = new NewObjects(module, types);
        List<WasmFunction> functions = new ArrayList<>();
        for (WasmFunction function : module.functions) functions.add(function);
        List<Birth> births = new ArrayList<>();
        for (WasmFunction function : functions) births.addAll(objects.births(function));
        for (Birth birth : births)
            birth.filled().ifPresent(by -> objects.calls.merge(by.getFunction(), 1, Integer::sum));
        for (Birth birth : births) objects.shorten(birth);
    }

    /** {@code new X; tee t; get class; set X.class; get t}, with the constructor's call and the {@code get t} after it where there is one. */
    private record Birth(
            WasmStructNewDefault made,
            WasmTeeLocal kept,
            WasmGetGlobal kind,
            WasmStructSet head,
            WasmGetLocal first,
            Optional<WasmCall> filled) {
        int references() {
            return filled.isPresent() ? 3 : 2;
        }
    }

    private List<Birth> births(WasmFunction function) {
        Map<WasmLocal, Integer> references = new HashMap<>();
        List<Birth> found = new ArrayList<>();
        Instructions.walk(function.getBody(), one -> {
            Instructions.local(one).ifPresent(local -> references.merge(local, 1, Integer::sum));
            if (one instanceof WasmStructNewDefault made) birth(made).ifPresent(found::add);
        });
        Map<WasmLocal, Integer> ours = new HashMap<>();
        for (Birth birth : found) ours.merge(birth.kept().getLocal(), birth.references(), Integer::sum);
        found.removeIf(birth -> !Objects.equals(
                ours.get(birth.kept().getLocal()), references.get(birth.kept().getLocal())));
        return found;
    }

    private static Optional<Birth> birth(WasmStructNewDefault made) {
        if (made.getNext() instanceof WasmTeeLocal kept
                && kept.getNext() instanceof WasmGetGlobal kind
                && kind.getNext() instanceof WasmStructSet head
                && head.getFieldIndex() == 0
                && head.getNext() instanceof WasmGetLocal first
                && first.getLocal().equals(kept.getLocal())
                && made.getType().getFields().size() >= HEAD)
            return Optional.of(new Birth(made, kept, kind, head, first, filled(first)));
        return Optional.empty();
    }

    /** The constructor's call that is followed by the object again. */
    private static Optional<WasmCall> filled(WasmGetLocal first) {
        for (WasmInstruction one = first.getNext(); one != null; one = one.getNext()) {
            if (Instructions.mention(one, first.getLocal())) return Optional.empty();
            if (one instanceof WasmCall call
                    && call.getNext() instanceof WasmGetLocal again
                    && again.getLocal().equals(first.getLocal()))
                return isConstructor(call.getFunction()) ? Optional.of(call) : Optional.empty();
        }
        return Optional.empty();
    }

    private static boolean isConstructor(WasmFunction function) {
        return function.getJavaMethod() != null
                && function.getJavaMethod().getName().equals("<init>");
    }

    private void shorten(Birth birth) {
        if (birth.filled().isPresent()) {
            WasmCall call = birth.filled().get();
            if (calls.getOrDefault(call.getFunction(), 0) > 1) {
                WasmFunction maker = makers.computeIfAbsent(call.getFunction(), init -> maker(init, birth));
                clear(birth);
                call.getNext().delete();
                call.setFunction(maker);
            }
            return;
        }
        if (!whole(birth)) {
            WasmFunction empty = empties.computeIfAbsent(birth.made().getType(), type -> empty(birth));
            birth.first().insertNext(new WasmCall(empty));
            clear(birth);
        }
    }

    private static void clear(Birth birth) {
        birth.made().delete();
        birth.kept().delete();
        birth.kind().delete();
        birth.head().delete();
        birth.first().delete();
    }

    /** Its fields in their order, each from what is at hand, before anybody looks: {@code get v; a; set 2; get v; b; set 3}. */
    private static boolean whole(Birth birth) {
        WasmStructure type = birth.made().getType();
        int fields = type.getFields().size();
        if (fields == HEAD) {
            List<WasmInstruction> parts = parts(birth, List.of());
            WasmInstruction at = birth.first();
            for (WasmInstruction part : parts) {
                at.insertNext(part);
                at = part;
            }
            clear(birth);
            return true;
        }
        WasmInstruction named = birth.first().getNext();
        WasmLocal name;
        WasmInstruction one;
        if (named instanceof WasmTeeLocal tee) {
            name = tee.getLocal();
            one = tee;
        } else if (named instanceof WasmSetLocal set) {
            name = set.getLocal();
            one = set.getNext();
            while (one != null && !Instructions.mention(one, name)) one = one.getNext();
        } else return false;
        List<WasmInstruction> values = new ArrayList<>();
        List<WasmInstruction> gone = new ArrayList<>();
        for (int field = HEAD; field < fields; field++) {
            boolean ours = (one instanceof WasmTeeLocal tee && tee.getLocal().equals(name))
                    || (one instanceof WasmGetLocal get && get.getLocal().equals(name));
            if (!ours || one == null) return false;
            WasmInstruction value = one.getNext();
            if (!isAtHand(value) || Instructions.mention(value, name)) return false;
            if (!(value.getNext() instanceof WasmStructSet set
                    && set.getType().equals(type)
                    && set.getFieldIndex() == field)) return false;
            gone.add(one);
            values.add(value);
            gone.add(set);
            one = set.getNext();
        }
        WasmInstruction last = gone.get(gone.size() - 1);
        WasmInstruction at = last;
        for (WasmInstruction value : values) value.delete();
        for (WasmInstruction part : parts(birth, values)) {
            at.insertNext(part);
            at = part;
        }
        at.insertNext(new WasmSetLocal(name));
        named.delete();
        for (WasmInstruction each : gone) each.delete();
        clear(birth);
        return true;
    }

    private static List<WasmInstruction> parts(Birth birth, List<WasmInstruction> values) {
        List<WasmInstruction> parts = new ArrayList<>();
        parts.add(new WasmGetGlobal(birth.kind().getGlobal()));
        WasmField lock = birth.made().getType().getFields().get(1);
        parts.add(new WasmNullConstant((WasmType.Reference) lock.getUnpackedType()));
        parts.addAll(values);
        parts.add(new WasmStructNew(birth.made().getType()));
        return parts;
    }

    private static boolean isAtHand(WasmInstruction one) {
        return one instanceof WasmGetLocal
                || one instanceof WasmGetGlobal
                || one instanceof WasmInt32Constant
                || one instanceof WasmInt64Constant
                || one instanceof WasmFloat64Constant
                || one instanceof WasmNullConstant;
    }

    private WasmFunction maker(WasmFunction init, Birth birth) {
        List<? extends WasmType> given = init.getType().getParameterTypes();
        WasmType[] asked = given.subList(1, given.size()).toArray(new WasmType[0]);
        WasmFunction maker = new WasmFunction(types.of(birth.kept().getLocal().getType(), asked));
        List<WasmLocal> arguments = new ArrayList<>();
        for (WasmType type : asked) {
            WasmLocal argument = new WasmLocal(type);
            maker.add(argument);
            arguments.add(argument);
        }
        WasmLocal made = begin(maker, birth);
        WasmInstructionList body = maker.getBody();
        body.add(new WasmGetLocal(made));
        for (WasmLocal argument : arguments) body.add(new WasmGetLocal(argument));
        body.add(new WasmCall(init));
        body.add(new WasmGetLocal(made));
        module.functions.add(maker);
        return maker;
    }

    private WasmFunction empty(Birth birth) {
        WasmFunction maker = new WasmFunction(types.of(birth.kept().getLocal().getType()));
        WasmLocal made = begin(maker, birth);
        maker.getBody().add(new WasmGetLocal(made));
        module.functions.add(maker);
        return maker;
    }

    private static WasmLocal begin(WasmFunction maker, Birth birth) {
        WasmLocal made = new WasmLocal(birth.kept().getLocal().getType());
        maker.add(made);
        WasmGlobal kind = birth.kind().getGlobal();
        WasmInstructionList body = maker.getBody();
        body.add(new WasmStructNewDefault(birth.made().getType()));
        body.add(new WasmTeeLocal(made));
        body.add(new WasmGetGlobal(kind));
        body.add(new WasmStructSet(birth.head().getType(), 0));
        return made;
    }
}
