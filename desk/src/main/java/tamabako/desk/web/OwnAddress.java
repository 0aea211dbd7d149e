package tamabako.desk.web;

/// Addresses that a form brings along to go back to.
public final class OwnAddress {

    private OwnAddress() {}

    /// That address where it is one of the desk itself, else the first page.
    public static String orHome(String address) {
        boolean own = address.matches("/[!-~&&[^\\\\]]*") && !address.startsWith("//");
        return own ? address : "/";
    }
}
