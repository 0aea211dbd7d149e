package tamabako.records;

import java.util.Optional;

/// How the class book is to be kept: texts by name.
public final class Settings {

    private final Door door;

    Settings(Door door) {
        this.door = door;
    }

    /// The setting of that name, if it was ever set.
    public Optional<String> find(String name) {
        return door.ask(book ->
                book.createQuery("select value from setting where name = :name")
                        .bind("name", name)
                        .mapTo(String.class)
                        .findOne());
    }

    /// Sets it.
    public void keep(String name, String value) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into setting (name, value) values (:name, :value)
                                on conflict (name) do update set value = excluded.value
                                """)
                        .bind("name", name)
                        .bind("value", value)
                        .execute());
    }
}
