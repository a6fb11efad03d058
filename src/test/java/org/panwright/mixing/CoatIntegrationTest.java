package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.Tolerance;

/**
 * {@link Coat} against a numerical integration of the two differential equations it solves, by a
 * general library that knows nothing of paint.
 */
class CoatIntegrationTest {
  private static final int SAMPLES = 250;

  @ParameterizedTest(name = "random net {0}")
  @ValueSource(longs = {11, 22, 33, 44})
  void closedFormIsTheIntegralOfTheEquations(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < SAMPLES; i++) {
      double k = sometimesZero(random, 1e-4, 20);
      double s = sometimesZero(random, 1e-4, 10);
      double x = logUniform(random, 1e-4, 1);
      double g = random.nextDouble();

      double[] overPaper = integrate(k, s, x, g);
      double[] overBlack = integrate(k, s, x, 0);

      assertThat(Coat.reflectance(k, s, x, g))
          .as("K %s, S %s, X %s over %s", k, s, x, g)
          .isCloseTo(overPaper[1] / overPaper[0], Tolerance.INTEGRATED);
      assertThat(Coat.transmittance(k, s, x))
          .as("K %s, S %s, X %s", k, s, x)
          .isCloseTo(1 / overBlack[0], Tolerance.INTEGRATED);
    }
  }

  /**
   * Light going down (i) and up (j) at the top of a coat, when at its foot i = 1 and j = g. With x
   * counted upwards the equations of Kubelka and Munk (1931) are
   *
   * <pre>
   * di/dx =  (K + S) i − S j
   * dj/dx = −(K + S) j + S i
   * </pre>
   */
  private static double[] integrate(double k, double s, double x, double g) {
    OrdinaryDifferentialEquation twoStreams =
        new OrdinaryDifferentialEquation() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public double[] computeDerivatives(double t, double[] flux) {
            return new double[] {(k + s) * flux[0] - s * flux[1], -(k + s) * flux[1] + s * flux[0]};
          }
        };
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-12 * x, x, 1e-15, 1e-13);
    ODEStateAndDerivative top =
        integrator.integrate(twoStreams, new ODEState(0, new double[] {1, g}), x);
    return top.getPrimaryState();
  }

  private static double sometimesZero(Random random, double low, double high) {
    return random.nextInt(10) == 0 ? 0 : logUniform(random, low, high);
  }

  private static double logUniform(Random random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }
}
