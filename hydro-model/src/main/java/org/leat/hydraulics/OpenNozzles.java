package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Nozzles open on one manifold. Each takes from the manifold's total head Hm its branch loss and its jet: {@code Hm = Kb
 * Vb²/(2g) + Vj²/(2 g Cv²)}. Its flow is then {@code q = s √Hm}; the sum of all s is the {@link #conductance}.
 *
 * @param bores m, one for each open nozzle; empty where all are shut
 * @param velocityCoefficient Cv, above 0 to 1
 * @param contractionCoefficient Cc, above 0 to 1
 * @param branchBore of the pipe from the manifold to each nozzle, m; used only where {@code branchLoss} is not zero
 * @param branchLoss Kb on that bore; zero where nozzles sit on the manifold itself
 */
public record OpenNozzles(
        List<Double> bores,
        double velocityCoefficient,
        double contractionCoefficient,
        double branchBore,
        double branchLoss) {

    public OpenNozzles {
        bores = List.copyOf(bores);
        bores.forEach(bore -> Physical.positive("nozzle bore", bore));
        Physical.within("velocityCoefficient", velocityCoefficient, Double.MIN_NORMAL, 1);
        Physical.within("contractionCoefficient", contractionCoefficient, Double.MIN_NORMAL, 1);
        if (Physical.notNegative("branchLoss", branchLoss) > 0) {
            Physical.positive("branchBore", branchBore);
        }
    }

    /** {@return nozzles that sit on the manifold itself} */
    public static OpenNozzles withoutBranches(
            List<Double> bores, double velocityCoefficient, double contractionCoefficient) {
        return new OpenNozzles(bores, velocityCoefficient, contractionCoefficient, 0, 0);
    }

    /** {@return flow of all nozzles over the root of the manifold's total head, m^2.5/s} */
    public double conductance() {
        double sum = 0;
        for (double bore : bores) {
            sum += conductance(bore);
        }
        return sum;
    }

    /** {@return the same of one nozzle} */
    private double conductance(double bore) {
        return 1
                / Math.sqrt(branchResistance()
                        + NozzleDischarge.totalHead(velocityCoefficient, contractionCoefficient, bore, 1));
    }

    private double branchResistance() {
        if (branchLoss == 0) {
            return 0;
        }
        double area = Math.PI / 4 * branchBore * branchBore;
        return branchLoss / (2 * Gravity.STANDARD * area * area);
    }

    /**
     * {@return the jets under a manifold head, in the order of the bores}
     *
     * @param manifoldHead total head, m
     * @param density kg/m³
     */
    public List<NozzleJet> jets(double manifoldHead, double density) {
        double root = Math.sqrt(Physical.notNegative("manifoldHead", manifoldHead));
        List<NozzleJet> jets = new ArrayList<>(bores.size());
        for (double bore : bores) {
            double flow = conductance(bore) * root;
            double head = manifoldHead - branchResistance() * flow * flow;
            double velocity = NozzleDischarge.jetVelocity(velocityCoefficient, head);
            double power = NozzleDischarge.jetPower(density, flow, velocity);
            double diameter = NozzleDischarge.jetDiameter(contractionCoefficient, bore);
            jets.add(new NozzleJet(bore, diameter, flow, head, velocity, power));
        }
        return jets;
    }
}
