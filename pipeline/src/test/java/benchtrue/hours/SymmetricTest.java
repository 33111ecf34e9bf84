package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SymmetricTest {
    /** The Hilbert matrix of order 4 and its inverse, which is whole numbers (Choi 1983, from memory). */
    private static final double[][] HILBERT = new double[4][4];

    private static final double[][] INVERSE = {
        {16, -120, 240, -140}, {-120, 1_200, -2_700, 1_680}, {240, -2_700, 6_480, -4_200}, {-140, 1_680, -4_200, 2_800}
    };

    static {
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                HILBERT[i][j] = 1.0 / (i + j + 1);
            }
        }
    }

    @Test
    void theInverseOfTheHilbertMatrixIsWhole() {
        double[][] inverse = Symmetric.inverse(HILBERT);
        for (int i = 0; i < 4; i++) {
            assertThat(inverse[i]).containsExactly(INVERSE[i], within(1e-8));
        }
    }

    @Test
    void solvingGivesTheColumnOfTheInverse() {
        double[] right = {0, 1, 0, 0};
        Symmetric.solve(Symmetric.factor(HILBERT), right);
        assertThat(right).containsExactly(INVERSE[1], within(1e-8));
    }

    @Test
    void theDiagonalOfTheInverseComesFromTheFactorAlone() {
        double[] diagonal = Symmetric.inverseDiagonal(Symmetric.factor(HILBERT));
        assertThat(diagonal).containsExactly(new double[] {16, 1_200, 6_480, 2_800}, within(1e-8));
    }
}
