"""Documents for the page's checks."""


def comb(recesses, rounds, name, log=""):
    """A house with so many recesses in its south side: four walls each, and four more."""
    walls = [("east", "3 m"), ("north", "2 m"), ("east", "3 m"), ("south", "2 m")] * recesses
    walls += [("east", "3 m"), ("north", "6 m"), ("west", f"{6 * recesses + 3} m"), ("south", "6 m")]
    text = f'roundlay = 1\n\n[shell]\nname = {name}\nunits = "metric"\nthickness = "180 mm"\n'
    for number, (toward, length) in enumerate(walls, 1):
        text += f'\n[[wall]]\nname = "W{number}"\ntoward = "{toward}"\nlength = "{length}"\n'
    return (text + f'\n[rounds]\nheight = "{225 * rounds} mm"\ncount = {rounds}\ngap = "25 mm"\nfull_first = "W1"\ntop = "level"\n'
            '\n[notch]\nkind = "half dovetail"\nslope = "1:6"\n' + log)
