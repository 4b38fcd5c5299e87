import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;

/**
 * A cut list as the plain model says it, for OR-Tools' CP-SAT: a whole number of each size on each bar, a bar used or not. Started from its source by ./measure; says
 * what glpsol says.
 *
 * <p>Arguments: seconds, bars at most, room on a bar, then sizes and counts, both with commas between. Lengths in whole units, a kerf added.
 */
class PlainModel {
    public static void main(String[] arguments) {
        Loader.loadNativeLibraries();
        int bars = Integer.parseInt(arguments[1]);
        long room = Long.parseLong(arguments[2]);
        long[] sizes = numbers(arguments[3]);
        long[] counts = numbers(arguments[4]);

        CpModel model = new CpModel();
        IntVar[] used = new IntVar[bars];
        LinearExprBuilder[] cut = new LinearExprBuilder[sizes.length];
        for (int s = 0; s < sizes.length; s++) cut[s] = LinearExpr.newBuilder();
        for (int b = 0; b < bars; b++) {
            used[b] = model.newIntVar(0, 1, "y" + b);
            LinearExprBuilder taken = LinearExpr.newBuilder();
            for (int s = 0; s < sizes.length; s++) {
                IntVar pieces = model.newIntVar(0, counts[s], "x" + s + "_" + b);
                taken.addTerm(pieces, sizes[s]);
                cut[s].add(pieces);
            }
            model.addLessOrEqual(taken.addTerm(used[b], -room), 0);
            if (b > 0) model.addGreaterOrEqual(used[b - 1], used[b]);
        }
        for (int s = 0; s < sizes.length; s++) model.addGreaterOrEqual(cut[s], counts[s]);
        model.minimize(LinearExpr.sum(used));

        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(Double.parseDouble(arguments[0]));
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.OPTIMAL) System.out.println("INTEGER OPTIMAL");
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE)
            System.out.println("Objective: bars = " + Math.round(solver.objectiveValue()));
    }

    private static long[] numbers(String text) {
        return Arrays.stream(text.split(",")).mapToLong(Long::parseLong).toArray();
    }
}
