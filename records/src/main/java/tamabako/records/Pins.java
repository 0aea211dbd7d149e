package tamabako.records;

import java.security.SecureRandom;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/// The figures that pupils type beside their names to sit down in a room. They are a name tag, not
/// a lock: four figures that the desk draws, since children choose 1234.
public final class Pins {

    private static final SecureRandom RANDOM = new SecureRandom();

    private static final int OF = 10_000;

    private final Door door;

    Pins(Door door) {
        this.door = door;
    }

    /// The figures of each of these pupils; who has none yet gets some.
    public Map<String, String> of(Collection<String> pupils) {
        Map<String, String> pins = new HashMap<>();
        door.tell(book -> {
            for (String pupil : pupils) {
                book.execute(
                        """
                        insert into pupil_pin (pupil_id, pin) values (?, ?)
                        on conflict (pupil_id) do nothing
                        """,
                        pupil,
                        String.format(Locale.ROOT, "%04d", RANDOM.nextInt(OF)));
                book.createQuery("select pin from pupil_pin where pupil_id = :pupil")
                        .bind("pupil", pupil)
                        .mapTo(String.class)
                        .findOne()
                        .ifPresent(pin -> pins.put(pupil, pin));
            }
        });
        return Map.copyOf(pins);
    }
}
