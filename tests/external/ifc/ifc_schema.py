"""What ISO 16739-1:2018 (IFC4 ADD2 TC1) asks of the entities that a house is told by, written from the standard: the number,
kind and order of attributes, where a reference may lead, the words of enumerations, property and quantity sets.

An attribute is a word: what its value is, "?" behind it where it may be left out. "*" is derived.
  guid label text id   strings; label and id have 255 characters at most
  int real             numbers; "+" before: above zero
  bool                 .T. or .F.
  .NAME.               a word of ENUMERATIONS[NAME]
  #NAME                an instance of entity NAME or below it; [#NAME] a list of one or more, {#NAME} of different ones
  [real2] [real3]      coordinates
  value                a typed value of VALUES; [value] a list of them
"""
from part21 import DERIVED, UNSET, Enumeration, Fault, Ref, Text, Typed

ROOT = "guid #IfcOwnerHistory? label? text?"
OBJECT = ROOT + " label?"
PRODUCT = OBJECT + " #IfcObjectPlacement? #IfcProductRepresentation?"
ELEMENT = PRODUCT + " id?"

ENTITIES = {
    "IfcPerson": "id? label? label? [label]? [label]? [label]? [#IfcActorRole]? [#IfcAddress]?",
    "IfcOrganization": "id? label text? [#IfcActorRole]? [#IfcAddress]?",
    "IfcPersonAndOrganization": "#IfcPerson #IfcOrganization [#IfcActorRole]?",
    "IfcApplication": "#IfcOrganization label label id",
    "IfcOwnerHistory": "#IfcPersonAndOrganization #IfcApplication .IfcStateEnum.? .IfcChangeActionEnum.? int?"
                       " #IfcPersonAndOrganization? #IfcApplication? int",
    "IfcSIUnit": "* .IfcUnitEnum. .IfcSIPrefix.? .IfcSIUnitName.",
    "IfcDerivedUnitElement": "#IfcNamedUnit int",
    "IfcDerivedUnit": "{#IfcDerivedUnitElement} .IfcDerivedUnitEnum. label?",
    "IfcUnitAssignment": "{#IfcUnit}",
    "IfcCartesianPoint": "[real]",
    "IfcDirection": "[real]",
    "IfcAxis2Placement2D": "#IfcCartesianPoint #IfcDirection?",
    "IfcAxis2Placement3D": "#IfcCartesianPoint #IfcDirection? #IfcDirection?",
    "IfcLocalPlacement": "#IfcObjectPlacement? #IfcAxis2Placement3D",
    "IfcGeometricRepresentationContext": "label? label? +int +real? #IfcAxis2Placement3D #IfcDirection?",
    "IfcGeometricRepresentationSubContext": "label? label? * * * * #IfcGeometricRepresentationContext +real?"
                                            " .IfcGeometricProjectionEnum. label?",
    "IfcProject": OBJECT + " label? label? {#IfcRepresentationContext}? #IfcUnitAssignment?",
    "IfcSite": PRODUCT + " label? .IfcElementCompositionEnum.? [int]? [int]? real? label? #IfcAddress?",
    "IfcBuilding": PRODUCT + " label? .IfcElementCompositionEnum.? real? real? #IfcAddress?",
    "IfcBuildingStorey": PRODUCT + " label? .IfcElementCompositionEnum.? real?",
    "IfcWall": ELEMENT + " .IfcWallTypeEnum.?",
    "IfcMember": ELEMENT + " .IfcMemberTypeEnum.?",
    "IfcBeam": ELEMENT + " .IfcBeamTypeEnum.?",
    "IfcElementAssembly": ELEMENT + " .IfcAssemblyPlaceEnum.? .IfcElementAssemblyTypeEnum.?",
    "IfcMechanicalFastener": ELEMENT + " +real? +real? .IfcMechanicalFastenerTypeEnum.?",
    "IfcOpeningElement": ELEMENT + " .IfcOpeningElementTypeEnum.?",
    "IfcRelAggregates": ROOT + " #IfcObjectDefinition {#IfcObjectDefinition}",
    "IfcRelContainedInSpatialStructure": ROOT + " {#IfcProduct} #IfcSpatialElement",
    "IfcRelVoidsElement": ROOT + " #IfcElement #IfcOpeningElement",
    "IfcRelConnectsWithRealizingElements": ROOT + " #IfcConnectionGeometry? #IfcElement #IfcElement {#IfcElement} label?",
    "IfcRelDefinesByProperties": ROOT + " {#IfcObjectDefinition} #IfcPropertySetDefinition",
    "IfcRelAssociatesMaterial": ROOT + " {#IfcDefinitionSelect} #IfcMaterial",
    "IfcPropertySet": ROOT + " {#IfcProperty}",
    "IfcElementQuantity": ROOT + " label? {#IfcPhysicalQuantity}",
    "IfcPropertySingleValue": "id text? value? #IfcUnit?",
    "IfcPropertyEnumeration": "label [value] #IfcUnit?",
    "IfcPropertyEnumeratedValue": "id text? [value]? #IfcPropertyEnumeration?",
    "IfcPropertyBoundedValue": "id text? value? value? #IfcUnit? value?",
    "IfcQuantityLength": "label text? #IfcNamedUnit? real label?",
    "IfcQuantityArea": "label text? #IfcNamedUnit? real label?",
    "IfcQuantityVolume": "label text? #IfcNamedUnit? real label?",
    "IfcQuantityWeight": "label text? #IfcNamedUnit? real label?",
    "IfcMaterial": "label text? label?",
    "IfcMaterialProperties": "id? text? {#IfcProperty} #IfcMaterial",
    "IfcShapeRepresentation": "#IfcRepresentationContext label? label? {#IfcRepresentationItem}",
    "IfcProductDefinitionShape": "label? text? [#IfcRepresentation]",
    "IfcRepresentationMap": "#IfcAxis2Placement3D #IfcRepresentation",
    "IfcMappedItem": "#IfcRepresentationMap #IfcCartesianTransformationOperator3D",
    "IfcCartesianTransformationOperator3D": "#IfcDirection? #IfcDirection? #IfcCartesianPoint +real? #IfcDirection?",
    "IfcBoundingBox": "#IfcCartesianPoint +real +real +real",
    "IfcCartesianPointList3D": "[[real]]",
    "IfcTriangulatedFaceSet": "#IfcCartesianPointList3D [[real]]? bool? [[+int]] [[+int]]?",
    "IfcFacetedBrep": "#IfcClosedShell",
    "IfcClosedShell": "{#IfcFace}",
    "IfcFace": "{#IfcFaceBound}",
    "IfcFaceOuterBound": "#IfcPolyLoop bool",
    "IfcFaceBound": "#IfcPolyLoop bool",
    "IfcPolyLoop": "{#IfcCartesianPoint}",
    "IfcExtrudedAreaSolid": "#IfcProfileDef #IfcAxis2Placement3D? #IfcDirection +real",
    "IfcCircleProfileDef": ".IfcProfileTypeEnum. label? #IfcAxis2Placement2D? +real",
    "IfcRectangleProfileDef": ".IfcProfileTypeEnum. label? #IfcAxis2Placement2D? +real +real",
    "IfcStyledItem": "#IfcRepresentationItem? {#IfcPresentationStyle} label?",
    "IfcSurfaceStyle": "label? .IfcSurfaceSide. {#IfcSurfaceStyleShading}",
    "IfcSurfaceStyleShading": "#IfcColourRgb real?",
    "IfcColourRgb": "label? real real real",
}

ABOVE = {
    "IfcObjectPlacement": ["IfcLocalPlacement"],
    "IfcProductRepresentation": ["IfcProductDefinitionShape"],
    "IfcNamedUnit": ["IfcSIUnit"],
    "IfcUnit": ["IfcSIUnit", "IfcDerivedUnit"],
    "IfcRepresentationContext": ["IfcGeometricRepresentationContext", "IfcGeometricRepresentationSubContext"],
    "IfcElement": ["IfcWall", "IfcMember", "IfcBeam", "IfcElementAssembly", "IfcMechanicalFastener", "IfcOpeningElement"],
    "IfcSpatialElement": ["IfcSite", "IfcBuilding", "IfcBuildingStorey"],
    "IfcProperty": ["IfcPropertySingleValue", "IfcPropertyEnumeratedValue", "IfcPropertyBoundedValue"],
    "IfcPropertySetDefinition": ["IfcPropertySet", "IfcElementQuantity"],
    "IfcPhysicalQuantity": ["IfcQuantityLength", "IfcQuantityArea", "IfcQuantityVolume", "IfcQuantityWeight"],
    "IfcRepresentation": ["IfcShapeRepresentation"],
    "IfcRepresentationItem": ["IfcFacetedBrep", "IfcTriangulatedFaceSet", "IfcExtrudedAreaSolid", "IfcBoundingBox", "IfcMappedItem"],
    "IfcFaceBound": ["IfcFaceBound", "IfcFaceOuterBound"],
    "IfcProfileDef": ["IfcCircleProfileDef", "IfcRectangleProfileDef"],
    "IfcPresentationStyle": ["IfcSurfaceStyle"],
}
ABOVE["IfcProduct"] = ABOVE["IfcElement"] + ABOVE["IfcSpatialElement"]
ABOVE["IfcDefinitionSelect"] = ABOVE["IfcObjectDefinition"] = ABOVE["IfcProduct"] + ["IfcProject"]
ABOVE["IfcGeometricRepresentationContext"] = ABOVE["IfcRepresentationContext"]

ENUMERATIONS = {name: words.split() for name, words in {
    "IfcUnitEnum": "ABSORBEDDOSEUNIT AMOUNTOFSUBSTANCEUNIT AREAUNIT DOSEEQUIVALENTUNIT ELECTRICCAPACITANCEUNIT ELECTRICCHARGEUNIT"
                   " ELECTRICCONDUCTANCEUNIT ELECTRICCURRENTUNIT ELECTRICRESISTANCEUNIT ELECTRICVOLTAGEUNIT ENERGYUNIT FORCEUNIT"
                   " FREQUENCYUNIT ILLUMINANCEUNIT INDUCTANCEUNIT LENGTHUNIT LUMINOUSFLUXUNIT LUMINOUSINTENSITYUNIT"
                   " MAGNETICFLUXDENSITYUNIT MAGNETICFLUXUNIT MASSUNIT PLANEANGLEUNIT POWERUNIT PRESSUREUNIT RADIOACTIVITYUNIT"
                   " SOLIDANGLEUNIT THERMODYNAMICTEMPERATUREUNIT TIMEUNIT VOLUMEUNIT USERDEFINED",
    "IfcSIPrefix": "EXA PETA TERA GIGA MEGA KILO HECTO DECA DECI CENTI MILLI MICRO NANO PICO FEMTO ATTO",
    "IfcSIUnitName": "AMPERE BECQUEREL CANDELA COULOMB CUBIC_METRE DEGREE_CELSIUS FARAD GRAM GRAY HENRY HERTZ JOULE KELVIN LUMEN"
                     " LUX METRE MOLE NEWTON OHM PASCAL RADIAN SECOND SIEMENS SIEVERT SQUARE_METRE STERADIAN TESLA VOLT WATT WEBER",
    "IfcDerivedUnitEnum": "MASSDENSITYUNIT USERDEFINED",
    "IfcStateEnum": "READWRITE READONLY LOCKED READWRITELOCKED READONLYLOCKED",
    "IfcChangeActionEnum": "NOCHANGE MODIFIED ADDED DELETED NOTDEFINED",
    "IfcGeometricProjectionEnum": "GRAPH_VIEW SKETCH_VIEW MODEL_VIEW PLAN_VIEW REFLECTED_PLAN_VIEW SECTION_VIEW ELEVATION_VIEW"
                                  " USERDEFINED NOTDEFINED",
    "IfcElementCompositionEnum": "COMPLEX ELEMENT PARTIAL",
    "IfcWallTypeEnum": "MOVABLE PARAPET PARTITIONING PLUMBINGWALL SHEAR SOLIDWALL STANDARD POLYGONAL ELEMENTEDWALL USERDEFINED"
                       " NOTDEFINED",
    "IfcMemberTypeEnum": "BRACE CHORD COLLAR MEMBER MULLION PLATE POST PURLIN RAFTER STRINGER STRUT STUD USERDEFINED NOTDEFINED",
    "IfcBeamTypeEnum": "BEAM JOIST HOLLOWCORE LINTEL SPANDREL T_BEAM USERDEFINED NOTDEFINED",
    "IfcAssemblyPlaceEnum": "SITE FACTORY NOTDEFINED",
    "IfcElementAssemblyTypeEnum": "ACCESSORY_ASSEMBLY ARCH BEAM_GRID BRACED_FRAME GIRDER REINFORCEMENT_UNIT RIGID_FRAME SLAB_FIELD"
                                  " TRUSS USERDEFINED NOTDEFINED",
    "IfcMechanicalFastenerTypeEnum": "ANCHORBOLT BOLT DOWEL NAIL NAILPLATE RIVET SCREW SHEARCONNECTOR STAPLE STUDSHEARCONNECTOR"
                                     " USERDEFINED NOTDEFINED",
    "IfcOpeningElementTypeEnum": "OPENING RECESS USERDEFINED NOTDEFINED",
    "IfcProfileTypeEnum": "CURVE AREA",
    "IfcSurfaceSide": "POSITIVE NEGATIVE BOTH",
}.items()}

VALUES = {"IFCLABEL": str, "IFCTEXT": str, "IFCIDENTIFIER": str, "IFCINTEGER": int, "IFCBOOLEAN": bool, "IFCLENGTHMEASURE": float,
          "IFCPOSITIVELENGTHMEASURE": float, "IFCMASSMEASURE": float, "IFCMASSDENSITYMEASURE": float}

# Of the sets that are used: what each may hold.
SETS = {
    "Pset_MemberCommon": "Reference Status Span Slope Roll IsExternal ThermalTransmittance LoadBearing FireRating",
    "Pset_BeamCommon": "Reference Status Span Slope Roll IsExternal ThermalTransmittance LoadBearing FireRating",
    "Pset_WallCommon": "Reference Status AcousticRating FireRating Combustible SurfaceSpreadOfFlame ThermalTransmittance IsExternal"
                       " LoadBearing ExtendToStructure Compartmentation",
    "Qto_MemberBaseQuantities": "Length CrossSectionArea OuterSurfaceArea GrossSurfaceArea NetSurfaceArea GrossVolume NetVolume"
                                " GrossWeight NetWeight",
    "Qto_BeamBaseQuantities": "Length CrossSectionArea OuterSurfaceArea GrossSurfaceArea NetSurfaceArea GrossVolume NetVolume"
                              " GrossWeight NetWeight",
    "Qto_WallBaseQuantities": "Length Width Height GrossFootprintArea NetFootprintArea GrossSideArea NetSideArea GrossVolume NetVolume"
                              " GrossWeight NetWeight",
    "Qto_OpeningElementBaseQuantities": "Width Height Depth Area Volume",
}
QUANTITIES = {"IFCQUANTITYLENGTH": "Length Width Height Depth",
              "IFCQUANTITYAREA": "CrossSectionArea OuterSurfaceArea GrossSurfaceArea NetSurfaceArea Area GrossFootprintArea"
                                 " NetFootprintArea GrossSideArea NetSideArea",
              "IFCQUANTITYVOLUME": "GrossVolume NetVolume Volume", "IFCQUANTITYWEIGHT": "GrossWeight NetWeight"}
STATUS = "NEW EXISTING DEMOLISH TEMPORARY OTHER NOTKNOWN UNSET".split()
GUID = set("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$")
LONGEST = 255

BY_KEYWORD = {name.upper(): name for name in ENTITIES}


def names_below(name):
    return {name} | set(ABOVE.get(name, []))


def is_text(value, longest=None):
    return isinstance(value, Text) and (longest is None or len(value) <= longest)


def is_number(value, kind):
    return isinstance(value, kind) and not isinstance(value, (bool, Ref))


def is_value(value):
    if not isinstance(value, Typed) or value.type not in VALUES:
        return False
    kind = VALUES[value.type]
    if kind is bool:
        return isinstance(value.value, Enumeration) and value.value in ("T", "F")
    if kind is str:
        return is_text(value.value, None if value.type == "IFCTEXT" else LONGEST)
    return is_number(value.value, kind) and (value.type != "IFCPOSITIVELENGTHMEASURE" or value.value > 0)


def refers(file, value, name):
    if not isinstance(value, Ref) or value not in file.data:
        return False
    return {BY_KEYWORD.get(keyword) for keyword in file.data[value]} <= names_below(name)


def holds(file, value, kind):
    """Is the value of that kind?"""
    if kind == "*":
        return value is DERIVED
    if kind.startswith(("[", "{")):
        if not isinstance(value, list) or not value:
            return False
        inner = kind[1:-1]
        different = kind[0] == "[" or len({int(v) for v in value if isinstance(v, Ref)}) == len(value)
        return different and all(holds(file, each, inner) for each in value)
    if kind.startswith("#"):
        return refers(file, value, kind[1:])
    if kind.startswith("."):
        return isinstance(value, Enumeration) and value in ENUMERATIONS[kind.strip(".")]
    if kind.startswith("+"):
        return holds(file, value, kind[1:]) and value > 0
    simple = {
        "guid": lambda v: is_text(v) and len(v) == 22 and set(v) <= GUID and v[0] in "0123",
        "label": lambda v: is_text(v, LONGEST), "id": lambda v: is_text(v, LONGEST), "text": is_text,
        "int": lambda v: is_number(v, int), "real": lambda v: is_number(v, float),
        "bool": lambda v: isinstance(v, Enumeration) and v in ("T", "F"), "value": is_value,
    }
    return simple[kind](value)


def faults(file):
    """Of every instance by itself."""
    guids = {}
    for id_, parts in file.data.items():
        if len(parts) != 1:
            yield Fault("complex", f"#{id_} is complex: IFC has none")
            continue
        (keyword, values), = parts.items()
        name = BY_KEYWORD.get(keyword)
        if name is None:
            yield Fault("entity", f"#{id_} is {keyword}, which no table here knows")
            continue
        kinds = ENTITIES[name].split()
        if len(values) != len(kinds):
            yield Fault("attributes", f"#{id_} {name} has {len(values)} of {len(kinds)}")
            continue
        for place, (value, kind) in enumerate(zip(values, kinds), 1):
            if value is UNSET and kind.endswith("?"):
                continue
            if not holds(file, value, kind.rstrip("?")):
                yield Fault("attribute", f"#{id_} {name}, number {place}: no {kind}")
        if kinds[0] == "guid" and is_text(values[0]):
            if values[0] in guids:
                yield Fault("guid", f"#{id_} and #{guids[values[0]]} are both {values[0]}")
            guids[values[0]] = id_
