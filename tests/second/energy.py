"""Energy of a year of a way to run the motor, from the transformer on."""

from lead import ohms
from tables import MOTORS
from units import HORSEPOWER, si

# Generic families of equipment that feed a three-phase motor from one phase: efficiency, displacement factor, distortion of
# the current; common practice, no single source, replaced by a data sheet's.
FAMILIES = {
    "converting_active": (0.95, 0.99, 0.10),
    "converting_passive": (0.96, 0.97, 0.80),
    "doubling": (0.94, 0.99, 0.10),
    "large_low_harmonic": (0.955, 0.99, 0.08),
    "large_economy": (0.965, 0.97, 0.80),
    "large_economy_choke": (0.965, 0.97, 0.48),
}


def nameplate(motor, volts):
    """Amperes of the nameplate at a voltage, else of the other voltage, else of table 430.250."""
    own, other = (230, 460) if volts == 240 else (460, 230)
    for plate in (own, other):
        if motor.get(f"nameplate_amps_{plate}"):
            return si(motor[f"nameplate_amps_{plate}"]) * plate / own
    power = min(MOTORS, key=lambda rating: abs(rating - si(motor["power"]) / HORSEPOWER))
    return MOTORS[power][0 if volts == 240 else 1]


def of_a_year(job, way):
    """Kilowatt-hours, the motor at its rating for the hours; nothing for equipment that is not in the table."""
    if way["kind"] not in FAMILIES or not way["lead"] or not way["supply"]:
        return None
    efficiency, displacement, distortion = FAMILIES[way["kind"]]
    motor, cable, supply = job["motor"], job["cable"], way["supply"]
    volts = int(way["lead_voltage"].split()[0])
    amps = nameplate(motor, volts)
    resistance, _ = ohms(way["lead"]["size"], way["lead"]["sets"], cable)
    length = si(job["site"]["pump_setting"]) + si(job["site"]["surface_run"])
    drawn = (si(motor["power"]) / si(motor["efficiency"]) + 3 * amps**2 * resistance * length) / efficiency
    true = displacement / (1 + distortion**2) ** 0.5
    current = drawn / (si(job["supply"]["volts"]) * true)
    copper, _ = ohms(supply["size"], supply["sets"], {"metal": "copper", "build": "plastic_conduit"})
    heat = 2 * current**2 * copper * si(supply["length"])
    return (drawn + heat) * si(job["energy"]["hours"]) / 3600 / 1000
