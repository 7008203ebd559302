@echo off
rem Starts leat. JAVA_HOME or the java of the PATH, version 17 or later; LEAT_JAVA_OPTIONS are handed to it.
setlocal
set "LEAT_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "LEAT_JAVA=%JAVA_HOME%\bin\java.exe"
if "%LEAT_JAVA%"=="java" where /q java || (echo leat: no Java found; install version 17 or later, or set JAVA_HOME>&2& exit /b 4)
"%LEAT_JAVA%" -Xshare:auto -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xss4m %LEAT_JAVA_OPTIONS% -jar "%~dp0..\lib\leat.jar" %*
exit /b %ERRORLEVEL%
