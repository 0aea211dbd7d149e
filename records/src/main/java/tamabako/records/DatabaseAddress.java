package tamabako.records;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads the address of a database as people write it.
final class DatabaseAddress {

    private static final Pattern SCHEME = Pattern.compile("[a-z][a-z0-9+.-]+:(//)?.*");

    private DatabaseAddress() {}

    static Database read(String written, Database.Password password) {
        String address = written.strip().replaceFirst("^jdbc:", "");
        if (address.startsWith("postgresql://") || address.startsWith("postgres://")) {
            return server(address, password);
        }
        if (address.isEmpty() || SCHEME.matcher(address).matches()) {
            throw new RecordsFailure(new Reason.NoSuchDatabase(written));
        }
        return new Database.Embedded(Path.of(address));
    }

    private static Database server(String address, Database.Password password) {
        URI uri;
        try {
            uri = new URI(address);
        } catch (URISyntaxException broken) {
            throw new RecordsFailure(new Reason.NoSuchDatabase(address), broken);
        }
        String user = Optional.ofNullable(uri.getUserInfo()).orElse("");
        String query = Optional.ofNullable(uri.getRawQuery()).orElse("");
        if (user.contains(":") || query.contains("password=")) {
            throw new RecordsFailure(new Reason.PasswordInAddress());
        }
        if (uri.getHost() == null || uri.getPath().length() < 2) {
            throw new RecordsFailure(new Reason.NoSuchDatabase(address));
        }
        String port = uri.getPort() < 0 ? "" : ":" + uri.getPort();
        String more = query.isEmpty() ? "" : "?" + query;
        String url = "jdbc:postgresql://" + uri.getHost() + port + uri.getRawPath() + more;
        String login = user.isEmpty() ? System.getProperty("user.name") : user;
        return new Database.Server(url, login, password);
    }
}
