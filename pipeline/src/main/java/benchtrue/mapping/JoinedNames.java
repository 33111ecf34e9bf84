package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.columns.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Joins the columns of a first and a last name into one. */
final class JoinedNames {
    private static final Set<String> FIRST = Set.of(
            "first name",
            "firstname",
            "given name",
            "vorname",
            "prenom",
            "nombre",
            "nome",
            "voornaam",
            "fornamn",
            "fornavn",
            "imie");
    private static final Set<String> LAST = Set.of(
            "last name",
            "lastname",
            "surname",
            "family name",
            "nachname",
            "familienname",
            "nom",
            "apellido",
            "apellidos",
            "cognome",
            "achternaam",
            "efternamn",
            "efternavn",
            "nazwisko",
            "sobrenome");

    private JoinedNames() {}

    /** Returns both columns as one of technicians; empty where a file has not both. */
    static Optional<Match> of(FileProfile file, Column column) {
        Optional<ColumnProfile> first = named(file, FIRST);
        Optional<ColumnProfile> last = named(file, LAST);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        String name = "{" + first.get().header() + "} {" + last.get().header() + "}";
        ColumnProfile joined = new ColumnProfile(
                name,
                Optional.empty(),
                Math.max(first.get().filled(), last.get().filled()),
                texts(first.get(), last.get()));
        return Optional.of(new Match(column, joined, 0.9, "first and last name in two columns"));
    }

    private static Optional<ColumnProfile> named(FileProfile file, Set<String> words) {
        return file.columns().stream()
                .filter(column -> words.contains(PlainWords.plain(column.header())))
                .findFirst();
    }

    /** Few people work in a shop: where both columns have as many names, they go together in the order they were met. */
    private static Map<String, Long> texts(ColumnProfile first, ColumnProfile last) {
        Map<String, Long> texts = new LinkedHashMap<>();
        List<String> lasts = new ArrayList<>(last.texts().keySet());
        if (lasts.size() == first.texts().size()) {
            int at = 0;
            for (Map.Entry<String, Long> name : first.texts().entrySet()) {
                texts.put(name.getKey() + " " + lasts.get(at++), name.getValue());
            }
        }
        return texts;
    }
}
