# The few toolkits of OpenCASCADE that are linked, under the names of either series: 7.8 renamed the data
# exchange toolkits (TKSTEP, TKXDESTEP -> TKDESTEP). The packaged config also names toolkits of the test
# harness that are not installed, so the list of all libraries is never used. It refuses a version in
# find_package, so the version is checked afterwards.
find_package(OpenCASCADE REQUIRED)
if(OpenCASCADE_VERSION VERSION_LESS 7.6)
    message(FATAL_ERROR "OpenCASCADE 7.6 or later is needed, found ${OpenCASCADE_VERSION}")
endif()

if(OpenCASCADE_VERSION VERSION_LESS 7.8)
    set(_roundlay_occ_exchange TKXSBase TKSTEPBase TKSTEPAttr TKSTEP209 TKSTEP TKXDESTEP)
else()
    set(_roundlay_occ_exchange TKXSBase TKDE TKDESTEP)
endif()

add_library(roundlay_opencascade INTERFACE)
target_include_directories(roundlay_opencascade SYSTEM INTERFACE ${OpenCASCADE_INCLUDE_DIR})
target_link_libraries(roundlay_opencascade INTERFACE
    TKernel TKMath TKG2d TKG3d TKGeomBase TKGeomAlgo TKBRep TKTopAlgo TKPrim TKBO TKShHealing)

add_library(roundlay_opencascade_exchange INTERFACE)
target_link_libraries(roundlay_opencascade_exchange INTERFACE
    roundlay_opencascade TKCDF TKLCAF TKCAF TKXCAF TKVCAF ${_roundlay_occ_exchange})
