// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.hipparchus.optim.ConvergenceChecker;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;

/**
 * Fits the model's few numbers to the trials, so that whoever doubts them can find them again: an evolution strategy that
 * learns which numbers move together (CMA-ES: Hansen & Ostermeier 2001, Evol. Comput. 9:159, from memory), over standard
 * deviations from where each number was thought to lie.
 */
public final class Fit {
    /** What straying from where a number was thought to lie counts: .01 a number one standard deviation off. */
    private static final double PRIOR = .01;

    private static final double FIRST_STEP = .7;

    private final List<FitNumber> numbers = FitNumber.all();

    private Fit() {}

    /** @param args see {@link FitOptions} */
    public static void main(String[] args) {
        FitOptions options = FitOptions.of(args);
        FitCases all = FitCases.read(Path.of(args[0]), options.given());
        FitCases fitted = options.without().isEmpty() ? all : all.without(options.without());
        FitCases left = all.only(options.without());
        if (!options.without().isEmpty() && left.isEmpty()) {
            System.err.println(
                    "fit: no farm " + options.without() + " among the site-years; expected one of " + all.farms());
            System.exit(2);
        }
        Fit fit = new Fit();
        double[] found = search(
                options,
                fit.numbers.size(),
                off -> fitted.with(FitNumber.at(fit.numbers, off)).loss() + prior(off));
        fit.print(found);
        fit.compare("farms fitted", fitted, found);
        if (!left.isEmpty()) {
            fit.compare("left out: " + options.without(), left, found);
        }
    }

    /** Where a loss of so many numbers is least, as far as the options let it look. */
    static double[] search(FitOptions options, int n, ToDoubleFunction<double[]> loss) {
        int population = 4 + (int) (3 * Math.log(n));
        long end = System.nanoTime() + (long) (options.minutes() * 60e9);
        ConvergenceChecker<PointValuePair> over = (round, before, now) -> System.nanoTime() > end;
        CMAESOptimizer search =
                new CMAESOptimizer(options.rounds(), 0, true, 0, 0, new MersenneTwister(options.seed()), false, over);
        double[] step = new double[n];
        Arrays.fill(step, FIRST_STEP);
        return search.optimize(
                        new ObjectiveFunction(loss::applyAsDouble),
                        GoalType.MINIMIZE,
                        new InitialGuess(new double[n]),
                        new CMAESOptimizer.Sigma(step),
                        new CMAESOptimizer.PopulationSize(population),
                        SimpleBounds.unbounded(n),
                        MaxEval.unlimited())
                .getPoint();
    }

    private static double prior(double[] off) {
        return PRIOR * Arrays.stream(off).map(x -> x * x).sum();
    }

    private void print(double[] off) {
        ParameterSet found = FitNumber.at(numbers, off);
        System.out.printf(Locale.ROOT, "%-18s %12s %12s %8s%n", "number", "in the code", "found", "sd off");
        for (int k = 0; k < off.length; k++) {
            Parameter p = numbers.get(k).parameter();
            System.out.printf(
                    Locale.ROOT,
                    "%-18s %12.5g %12.5g %8.2f%n",
                    p,
                    ParameterSet.usual().of(p),
                    found.of(p),
                    off[k]);
        }
    }

    private void compare(String title, FitCases cases, double[] off) {
        System.out.println(title);
        cases.with(ParameterSet.usual()).print("in the code");
        cases.with(FitNumber.at(numbers, off)).print("found");
    }
}
