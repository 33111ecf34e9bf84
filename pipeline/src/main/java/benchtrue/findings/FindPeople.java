package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import benchtrue.statistics.CrossedEffects;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

/**
 * Figures about people, only where the settings ask for them (methods, section 4): the mix of jobs taken out, from at least
 * thirty jobs over at least three kinds of repair, in the order of names. Rework and copied quotes never enter.
 */
final class FindPeople {
    private static final int ENOUGH_JOBS = 30;
    private static final int SEVERAL_TYPES = 3;
    private static final double REACH = Normal.quantile(0.95);

    private final JobRows rows;
    private final CrossedEffects fit;

    private FindPeople(JobModel model) {
        rows = model.rows();
        fit = model.fit();
    }

    /** Returns technicians, then quote writers; none where the settings hide people. */
    static List<PersonFactor> of(JobLines jobs, JobModel model, Settings settings) {
        List<PersonFactor> people = new ArrayList<>();
        if (settings.people() == Disclosure.SHOWN) {
            FindPeople find = new FindPeople(model);
            JobFactors factors = model.rows().factors();
            find.add(
                    people,
                    PersonFactor.Role.TECHNICIAN,
                    JobRows.TECHNICIAN,
                    jobs.ledger().technicians(),
                    factors::technician);
            find.add(people, PersonFactor.Role.QUOTE_WRITER, JobRows.WRITER, factors.writers(), factors::writer);
        }
        return people;
    }

    private void add(
            List<PersonFactor> people, PersonFactor.Role role, int factor, Names names, IntUnaryOperator personOf) {
        int[] jobs = new int[names.size()];
        List<TreeSet<Integer>> types = new ArrayList<>();
        names.all().forEach(name -> types.add(new TreeSet<>()));
        for (int row = 0; row < rows.finished(); row++) {
            int person = personOf.applyAsInt(rows.line()[row]);
            if (person != Absent.INDEX) {
                jobs[person]++;
                types.get(person).add(rows.factors().type(rows.line()[row]));
            }
        }
        for (int person = 0; person < jobs.length; person++) {
            if (jobs[person] >= ENOUGH_JOBS && types.get(person).size() >= SEVERAL_TYPES) {
                double effect = fit.effect(factor, person);
                double reach = REACH * fit.effectError(factor, person);
                people.add(new PersonFactor(
                        role,
                        names.name(person),
                        jobs[person],
                        types.get(person).size(),
                        StrictMath.exp(effect),
                        StrictMath.exp(effect - reach),
                        StrictMath.exp(effect + reach)));
            }
        }
    }
}
