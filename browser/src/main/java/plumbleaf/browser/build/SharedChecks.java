package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.teavm.backend.wasm.WasmFunctionTypes;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmLocal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.model.WasmStructure;
import org.teavm.backend.wasm.model.WasmType;
import org.teavm.backend.wasm.model.instruction.WasmBlock;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmCast;
import org.teavm.backend.wasm.model.instruction.WasmCastBranch;
import org.teavm.backend.wasm.model.instruction.WasmDrop;
import org.teavm.backend.wasm.model.instruction.WasmGetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInstructionList;
import org.teavm.backend.wasm.model.instruction.WasmNullBranch;
import org.teavm.backend.wasm.model.instruction.WasmSetLocal;
import org.teavm.backend.wasm.model.instruction.WasmStructGet;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;
import org.teavm.backend.wasm.model.instruction.WasmThrow;

/**
 * The compiler writes out each check where it is made: whether there is an object, whether it is of a kind, whether an index lies within its array. Here each such check becomes one
 * function, and a call of it stands in every place, almost fifty thousand in all.
 */
final class SharedChecks {
    private final WasmModule module;
    private final WasmFunctionTypes types;

    /** What tells one check from another, and its function. */
    private final Map<Object, WasmFunction> checks = new LinkedHashMap<>();

    private SharedChecks(WasmModule module, WasmFunctionTypes types) {
        this.module = module;
        this.types = types;
    }

    static void share(WasmModule module, WasmFunctionTypes types) {
        SharedChecks checks = new SharedChecks(module, types);
        List<WasmBlock> blocks = new ArrayList<>();
        for (WasmFunction function : module.functions)
            Instructions.walk(function.getBody(), one -> {
                if (one instanceof WasmBlock block && throwsAtLast(block)) blocks.add(block);
            });
        for (WasmBlock block : blocks) checks.share(block);
        for (WasmFunction check : checks.checks.values()) module.functions.add(check);
    }

    /** {@code ...; call what makes the exception; throw}. */
    private static boolean throwsAtLast(WasmBlock block) {
        return block.getBody().getLast() instanceof WasmThrow last && last.getPrevious() instanceof WasmCall;
    }

    private void share(WasmBlock block) {
        WasmInstruction first = block.getBody().getFirst();
        if (first instanceof WasmCastBranch cast && cast.getNext() instanceof WasmCall) kind(block, cast);
        else if (first instanceof WasmNullBranch branch
                && branch.getNext() instanceof WasmStructGet
                && block.getNext() instanceof WasmGetLocal again
                && again.getNext() instanceof WasmCast cast) named(block, again, cast);
        else if (first instanceof WasmNullBranch branch && branch.getNext() instanceof WasmCall) there(block);
        else IndexChecks.share(block, types, checks);
    }

    /** Whether there is an object: {@code block { branch if there is one; call; throw }}, after which the compiler keeps it once more. */
    private void there(WasmBlock block) {
        WasmType kind = block.getType().getInputTypes().get(0);
        List<WasmType> check = List.of(kind);
        boolean isNew = call(block, check, kind, kind);
        WasmInstruction called = block.getPrevious();
        block.delete();
        if (isNew) body(check).add(block);
        WasmInstruction kept = called.getNext();
        if (!(called.getPrevious() instanceof WasmGetLocal get)) return;
        if (kept instanceof WasmTeeLocal tee && tee.getLocal().equals(get.getLocal())) kept.delete();
        else if (kept instanceof WasmSetLocal set && set.getLocal().equals(get.getLocal())) {
            if (kept.getNext() instanceof WasmGetLocal again && again.getLocal().equals(get.getLocal())) again.delete();
            else kept.insertNext(new WasmDrop());
            kept.delete();
        }
    }

    /** What a module tells apart by itself: {@code block { branch if it is of the kind; call; throw }}. */
    private void kind(WasmBlock block, WasmCastBranch cast) {
        WasmType.Reference target = cast.getTargetType();
        Optional<WasmType.Reference> given = root(cast.getSourceType());
        if (given.isEmpty() || !given.equals(root(target))) return;
        boolean isNew = call(block, target, given.get(), target);
        block.delete();
        if (!isNew) return;
        block.setType(types.of(target, given.get()).asBlock());
        cast.setSourceType(given.get());
        body(target).add(block);
    }

    /**
     * What only the classes tell, of interfaces and arrays: {@code get v; block { branch if there is none; get its class; the class asked for; call whether it is one; branch; call;
     * throw }; get v; cast}.
     */
    private void named(WasmBlock block, WasmGetLocal again, WasmCast cast) {
        WasmInstruction before = block.getPrevious();
        boolean kept = before instanceof WasmGetLocal get && get.getLocal().equals(again.getLocal());
        boolean put = before instanceof WasmTeeLocal tee && tee.getLocal().equals(again.getLocal());
        Optional<WasmType.Reference> given = root(again.getLocal().getType());
        if (!(kept || put) || given.isEmpty()) return;
        WasmType.Reference target = cast.getTargetType();
        WasmGetGlobal of = asked(block);
        int depth = depth(of);
        List<Object> check = List.of(of.getGlobal(), depth, target);
        boolean isNew = call(block, check, given.get(), target);
        block.delete();
        if (isNew) {
            block.setType(types.of(null, given.get()).asBlock());
            if (depth > 0) ArrayKinds.ask(of, depth, module, types);
            WasmInstructionList body = body(check);
            body.add(block);
            body.add(new WasmGetLocal(given(check)));
            if (!given.get().equals(target)) body.add(new WasmCast(target));
        }
        if (put) before.delete();
        if (cast.getNext() instanceof WasmCast more && more.getTargetType().equals(target)) more.delete();
        cast.delete();
        again.delete();
    }

    private static WasmGetGlobal asked(WasmBlock block) {
        for (WasmInstruction one : block.getBody()) if (one instanceof WasmGetGlobal of) return of;
        throw new IllegalStateException("A check of a kind that names none");
    }

    /** How many times it is an array: behind the class stands a call for each, then the one that tells, then what goes where it is one. */
    private static int depth(WasmGetGlobal of) {
        int calls = 0;
        for (WasmInstruction one = of.getNext(); one instanceof WasmCall; one = one.getNext()) calls++;
        return calls - 1;
    }

    /** Calls the check before the block, and begins it where it is new. */
    private boolean call(WasmBlock block, Object check, WasmType given, WasmType target) {
        boolean isNew = !checks.containsKey(check);
        block.insertPrevious(new WasmCall(checks.computeIfAbsent(check, none -> {
            WasmFunction made = new WasmFunction(types.of(target, given));
            WasmLocal one = new WasmLocal(given);
            made.add(one);
            made.getBody().add(new WasmGetLocal(one));
            return made;
        })));
        return isNew;
    }

    private WasmFunction function(Object check) {
        return Optional.ofNullable(checks.get(check)).orElseThrow();
    }

    private WasmInstructionList body(Object check) {
        return function(check).getBody();
    }

    private WasmLocal given(Object check) {
        return function(check).getLocalVariables().get(0);
    }

    /** What all kinds that are related to it are a kind of. */
    private static Optional<WasmType.Reference> root(WasmType type) {
        if (!(type instanceof WasmType.CompositeReference reference
                && reference.composite instanceof WasmStructure kind)) return Optional.empty();
        WasmStructure root = kind;
        while (root.getSupertype() != null) root = root.getSupertype();
        return Optional.of(root.getReference());
    }
}
